# SPDX-License-Identifier: GPL-3.0-or-later
# `cpack -B build/package --config build/release/CPackConfig.cmake` makes two files of what is installed: a Debian package, and an archive
# to unpack and run anywhere (the programs look for their data beside themselves).

# Debian wants manuals and the changelog compressed, and without the time of doing so.
find_program(GZIP gzip REQUIRED)
function(install_compressed FILE DESTINATION)
  get_filename_component(NAME ${FILE} NAME)
  set(COMPRESSED ${CMAKE_BINARY_DIR}/compressed/${NAME}.gz)
  add_custom_command(OUTPUT ${COMPRESSED}
    COMMAND ${CMAKE_COMMAND} -E make_directory ${CMAKE_BINARY_DIR}/compressed
    COMMAND ${GZIP} -9nc ${CMAKE_SOURCE_DIR}/${FILE} > ${COMPRESSED}
    DEPENDS ${CMAKE_SOURCE_DIR}/${FILE} VERBATIM)
  add_custom_target(compressed_${NAME} ALL DEPENDS ${COMPRESSED})
  install(FILES ${COMPRESSED} DESTINATION ${DESTINATION})
endfunction()

install_compressed(resources/winterlarder-cli.1 share/man/man1)
install_compressed(resources/package/changelog share/doc/winterlarder)
install(FILES resources/package/copyright DESTINATION share/doc/winterlarder)
install(FILES resources/package/winterlarder-cli.bash DESTINATION share/bash-completion/completions RENAME winterlarder-cli)
if(TARGET winterlarder)
  install_compressed(resources/winterlarder.1 share/man/man1)
endif()

set(CPACK_GENERATOR DEB TGZ)
set(CPACK_PACKAGE_NAME winterlarder)
set(CPACK_PACKAGE_VENDOR Winterlarder)
set(CPACK_PACKAGE_CONTACT "Winterlarder <winterlarder@winterlarder.invalid>")
set(CPACK_PACKAGE_FILE_NAME winterlarder-${PROJECT_VERSION}-${CMAKE_SYSTEM_PROCESSOR})
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_DEPENDS "qt6-qpa-plugins")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "winter stores of honey bee colonies: take, leave or feed")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
"For keepers of honey bees who must decide before winter whether honey may be
taken, whether a colony can be left alone, or how much to feed. Combs, weight
and bees go in; some thousand winters are simulated for the place; out come
the answer, its chances and its sources.")
include(CPack)
