# Words that may follow, for bash: taken from the help of the command that stands before, so they are those of the program installed.

_winterlarder_cli() {
    local cur=${COMP_WORDS[COMP_CWORD]} word
    local -a command=("${COMP_WORDS[0]}")
    for word in "${COMP_WORDS[@]:1:COMP_CWORD-1}"; do
        case $word in
            -*) ;;
            *)
                # A word that is no command (a file, a value) ends the search.
                "${command[@]}" "$word" --help >/dev/null 2>&1 && command+=("$word")
                ;;
        esac
    done
    local help
    help=$("${command[@]}" --help 2>/dev/null) || return
    if [[ $cur == -* ]]; then
        mapfile -t COMPREPLY < <(compgen -W "$(grep -oE -- '(^|[ ,])--[a-z-]+' <<<"$help" | tr -d ' ,')" -- "$cur")
    else
        mapfile -t COMPREPLY < <(compgen -W "$(sed -n '/^Subcommands:/,/^$/s/^  \([a-z-]\{1,\}\).*/\1/p' <<<"$help")" -- "$cur")
    fi
}

complete -o default -o bashdefault -F _winterlarder_cli winterlarder-cli
