# SPDX-License-Identifier: GPL-3.0-or-later
# Each suite of a GoogleTest program as one test of ctest, named FOLDER.SUITE and labelled with the folder its file lies in. A process a
# suite, not a test: most tests take less time than a process does to start. The program itself tells its suites, when ctest starts.

if(NOT SUITES_PROGRAM) # a build's CMakeLists.txt includes this file
  # suites_of_program(TARGET TIMEOUT): its suites become tests of ctest.
  function(suites_of_program TARGET TIMEOUT)
    set(FILE ${CMAKE_CURRENT_BINARY_DIR}/${TARGET}_suites.cmake)
    file(GENERATE OUTPUT ${FILE} CONTENT "
set(SUITES_PROGRAM [==[$<TARGET_FILE:${TARGET}>]==])
set(SUITES_TIMEOUT ${TIMEOUT})
include([==[${CMAKE_CURRENT_SOURCE_DIR}/suites.cmake]==])
unset(SUITES_PROGRAM)
")
    set_property(DIRECTORY APPEND PROPERTY TEST_INCLUDE_FILES ${FILE})
  endfunction()
  return()
endif()

# ---- from here on: run by ctest ----------------------------------------------------------------------------------
cmake_path(GET SUITES_PROGRAM STEM SUITES_NAME)
if(NOT EXISTS ${SUITES_PROGRAM})
  add_test(${SUITES_NAME}.IsBuilt ${SUITES_PROGRAM})
  return()
endif()
set(SUITES_LIST ${SUITES_PROGRAM}_suites.json)
if(${SUITES_PROGRAM} IS_NEWER_THAN ${SUITES_LIST})
  execute_process(COMMAND ${SUITES_PROGRAM} --gtest_list_tests --gtest_output=json:${SUITES_LIST}
    OUTPUT_QUIET ERROR_VARIABLE SUITES_SAID RESULT_VARIABLE SUITES_STATUS)
  if(NOT SUITES_STATUS EQUAL 0)
    file(REMOVE ${SUITES_LIST})
    message(FATAL_ERROR "${SUITES_PROGRAM} does not tell its tests: ${SUITES_SAID}")
  endif()
endif()
# Of each suite two lines: its name (indented by six), and the file of its first test.
set(SUITES_SUITE)
file(STRINGS ${SUITES_LIST} SUITES_LINES REGEX "^      \"name\"|^          \"file\"")
foreach(SUITES_LINE IN LISTS SUITES_LINES)
  string(REPLACE "\\/" "/" SUITES_LINE "${SUITES_LINE}")
  if(SUITES_LINE MATCHES "^      \"name\": \"(.*)\"")
    set(SUITES_SUITE ${CMAKE_MATCH_1})
  elseif(SUITES_SUITE AND SUITES_LINE MATCHES "\"file\": \".*/([^/]+)/[^/]+\"")
    set(SUITES_TEST ${CMAKE_MATCH_1}.${SUITES_SUITE})
    add_test(${SUITES_TEST} ${SUITES_PROGRAM} "--gtest_filter=${SUITES_SUITE}.*")
    set_tests_properties(${SUITES_TEST} PROPERTIES LABELS ${CMAKE_MATCH_1} TIMEOUT ${SUITES_TIMEOUT})
    set(SUITES_SUITE)
  endif()
endforeach()
