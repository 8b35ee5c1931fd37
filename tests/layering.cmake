# The arrows geometry <- core <- ui <- app, as a test: cmake -D ROOT=… -P tests/layering.cmake
# Fails with every include that points the wrong way.

if(NOT IS_DIRECTORY "${ROOT}/geometry" OR NOT IS_DIRECTORY "${ROOT}/core")
    message(FATAL_ERROR "ROOT must name the project's folder")
endif()

# forbid(folder pattern what) fails for each #include in the folder whose path matches; `except` is a pattern of files let through.
function(forbid folder pattern what)
    cmake_parse_arguments(ARG "" "EXCEPT" "" ${ARGN})
    file(GLOB_RECURSE files RELATIVE "${ROOT}" "${ROOT}/${folder}/*.hpp" "${ROOT}/${folder}/*.cpp")
    foreach(file IN LISTS files)
        if(ARG_EXCEPT AND file MATCHES "${ARG_EXCEPT}")
            continue()
        endif()
        file(STRINGS "${ROOT}/${file}" hits REGEX "^[ \t]*#[ \t]*include[ \t]*[<\"](${pattern})")
        foreach(hit IN LISTS hits)
            message(SEND_ERROR "${file} includes ${what}: ${hit}")
        endforeach()
    endforeach()
endfunction()

set(qt "Q[A-Z]|Qt[A-Z]")
# Any OpenCASCADE header ends in .hxx.
set(occt "[A-Za-z0-9_]+\\.hxx")

forbid(geometry "${qt}" "Qt")
forbid(geometry "core/|ui/|app/" "a layer above it")
forbid(geometry "spdlog|nlohmann|toml\\+\\+|CLI/" "a library that geometry does without")
# Outside geometry/occt only .cpp files may see OpenCASCADE, so that its headers stop at the library's edge.
forbid(geometry "${occt}" "OpenCASCADE in a header" EXCEPT "^geometry/occt/|\\.cpp$")

forbid(core "${qt}" "Qt")
forbid(core "ui/|app/" "a layer above it")
forbid(core "${occt}" "OpenCASCADE")
forbid(core "CLI/" "the command line's library")

forbid(ui "app/" "a layer above it")
forbid(ui "${occt}" "OpenCASCADE outside the 3D view" EXCEPT "^ui/view3d/")
forbid(app "${occt}" "OpenCASCADE")

# Nothing that ships includes its tests.
foreach(folder IN ITEMS geometry core ui app)
    forbid(${folder} "tests/|catch2" "tests")
endforeach()
