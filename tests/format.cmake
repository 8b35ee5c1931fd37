# Every C++ file stands as .clang-format (version 14) would write it: cmake -D ROOT=… -D CLANG_FORMAT=… -P tests/format.cmake

set(files "")
foreach(folder IN ITEMS geometry core ui app tests)
    file(GLOB_RECURSE found "${ROOT}/${folder}/*.hpp" "${ROOT}/${folder}/*.cpp")
    list(APPEND files ${found})
endforeach()
if(NOT files)
    message(FATAL_ERROR "no source file was found under ${ROOT}")
endif()
execute_process(COMMAND "${CLANG_FORMAT}" --dry-run -Werror ${files} RESULT_VARIABLE status)
if(NOT status EQUAL 0)
    message(FATAL_ERROR "run clang-format -i on the files named above")
endif()
