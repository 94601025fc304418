# SPDX-License-Identifier: GPL-3.0-or-later
# What demo/run, tests/run and .ci/run share; sourced by them, never run alone. The names of the packages stand in
# resources/packages and nowhere else.

project=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)

say() { printf '== %s\n' "$*"; }
fail() { printf '== %s\n' "$*" >&2; exit 1; }

# packages_of LIST...: the names in these lists of resources/packages.
packages_of() {
  local list
  for list in "$@"; do sed -e 's/#.*//' -e 's/[[:space:]]//g' -e '/^$/d' "$project/resources/packages/$list.txt"; done
}

# missing_packages LIST...: those of them that are not installed.
missing_packages() {
  local wanted installed
  wanted=$(packages_of "$@" | sort -u)
  # shellcheck disable=SC2086  # one word a package
  installed=$(dpkg-query -W -f '${db:Status-Status} ${Package}\n' $wanted 2>/dev/null | sed -n 's/^installed //p' | sort -u) || true
  comm -23 <(printf '%s\n' "$wanted") <(printf '%s\n' "$installed")
}

# as_root COMMAND...: as we are if we are root, else through sudo.
as_root() {
  if [ "$(id -u)" -eq 0 ]; then "$@"
  elif command -v sudo >/dev/null; then sudo "$@"
  else fail "packages have to be installed: run this once as root, or install sudo"
  fi
}

# install_packages LIST...: installs what is missing, and nothing where nothing is.
install_packages() {
  if ! command -v apt-get >/dev/null || ! command -v dpkg-query >/dev/null; then
    say "This is no Debian: please have these ready yourself: $(packages_of "$@" | tr '\n' ' ')"
    return
  fi
  local missing
  missing=$(missing_packages "$@")
  if [ -z "$missing" ]; then
    say "All packages are installed"
    return
  fi
  say "Installing what is missing:" $missing
  as_root env DEBIAN_FRONTEND=noninteractive apt-get -o DPkg::Lock::Timeout=600 update
  # shellcheck disable=SC2086  # one word a package
  as_root env DEBIAN_FRONTEND=noninteractive apt-get -o DPkg::Lock::Timeout=600 install --yes --no-install-recommends $missing
}

# build_preset PRESET OPTION...: configures (with these options for cmake) and builds build/PRESET.
build_preset() {
  local preset=$1
  cd "$project"
  say "Configuring build/$preset"
  cmake --preset "$@"
  say "Building build/$preset (the first time takes some minutes)"
  cmake --build --preset "$preset"
}

build_release() { build_preset release "$@"; }

# A locale that can say everything the programs say.
use_utf8() {
  case "${LC_ALL:-${LC_CTYPE:-${LANG:-}}}" in
    *[Uu][Tt][Ff]*8*) ;;
    *) export LC_ALL=C.UTF-8 ;;
  esac
}
