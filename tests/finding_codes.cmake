# Every finding code that core can tell stands in a test: cmake -D ROOT=… -P tests/finding_codes.cmake
# A code counts as told where a literal follows a level, and as tested where a test has it in quotes. Whether the test
# provokes it, rather than only naming it, is for its reader to see.

cmake_minimum_required(VERSION 3.25)

if(NOT IS_DIRECTORY "${ROOT}/core" OR NOT IS_DIRECTORY "${ROOT}/tests")
    message(FATAL_ERROR "ROOT must name the project's folder")
endif()

# Not provoked by any test yet. The list may only grow shorter.
set(owed)

file(GLOB_RECURSE tests "${ROOT}/tests/*.cpp" "${ROOT}/tests/*.hpp" "${ROOT}/tests/*.py")
set(tested "")
foreach(file IN LISTS tests)
    file(READ "${file}" text)
    string(REGEX MATCHALL "\"[a-z]+(-[a-z]+)*\"" literals "${text}")
    list(APPEND tested ${literals})
endforeach()
list(REMOVE_DUPLICATES tested)

file(GLOB_RECURSE sources RELATIVE "${ROOT}" "${ROOT}/core/*.cpp")
set(count 0)
foreach(file IN LISTS sources)
    file(READ "${ROOT}/${file}" text)
    string(REGEX MATCHALL "Level::[A-Z][a-z]+[ \t\r\n]*[,:][^\"]?[^\";]*\"[a-z]+(-[a-z]+)+\"" told "${text}")
    foreach(match IN LISTS told)
        string(REGEX MATCH "[a-z-]+\"$" code "${match}")
        string(REPLACE "\"" "" code "${code}")
        math(EXPR count "${count} + 1")
        if("\"${code}\"" IN_LIST tested)
            if(code IN_LIST owed)
                message(SEND_ERROR "${code} has a test now; take it off the list in tests/finding_codes.cmake")
            endif()
        elseif(NOT code IN_LIST owed)
            message(SEND_ERROR "${file} tells ${code}, which no test provokes")
        endif()
    endforeach()
endforeach()
if(count LESS 50)
    message(SEND_ERROR "only ${count} codes were found; the pattern no longer fits the sources")
endif()
