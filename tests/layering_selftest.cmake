# Proves that layering.cmake bites: copies the sources, puts one wrong include at a time into the copy and expects a failure.
# cmake -D ROOT=… -D SCRATCH=… -P tests/layering_selftest.cmake

set(copy "${SCRATCH}/layering_copy")
file(REMOVE_RECURSE "${copy}")
foreach(folder IN ITEMS geometry core ui app)
    file(COPY "${ROOT}/${folder}" DESTINATION "${copy}")
endforeach()

function(check expected what)
    execute_process(COMMAND "${CMAKE_COMMAND}" -D "ROOT=${copy}" -P "${ROOT}/tests/layering.cmake"
        RESULT_VARIABLE status OUTPUT_VARIABLE output ERROR_VARIABLE output)
    if(expected STREQUAL "passes" AND NOT status EQUAL 0)
        message(SEND_ERROR "the check fails where it should pass (${what}):\n${output}")
    elseif(expected STREQUAL "fails" AND status EQUAL 0)
        message(SEND_ERROR "the check let through: ${what}")
    elseif(expected STREQUAL "fails" AND NOT output MATCHES "probe")
        message(SEND_ERROR "the check failed without naming the file (${what}):\n${output}")
    endif()
endfunction()

function(wrong file line)
    file(WRITE "${copy}/${file}" "#pragma once\n${line}\n")
    check(fails "${line} in ${file}")
    file(REMOVE "${copy}/${file}")
endfunction()

function(right file line)
    file(WRITE "${copy}/${file}" "${line}\n")
    check(passes "${line} in ${file}")
    file(REMOVE "${copy}/${file}")
endfunction()

check(passes "the tree as it is")

wrong(geometry/probe.hpp "#include <QString>")
wrong(geometry/probe.cpp "#include <QtCore/QString>")
wrong(geometry/probe.cpp "#  include \"core/units/length.hpp\"")
wrong(geometry/probe.hpp "#include <gp_Pnt.hxx>")
wrong(geometry/probe.cpp "#include <spdlog/spdlog.h>")
wrong(core/units/probe.hpp "#include <QString>")
wrong(core/units/probe.cpp "#include \"ui/window/run_window.hpp\"")
wrong(core/units/probe.cpp "    #include <AIS_Shape.hxx>")
wrong(core/units/probe.cpp "#include <catch2/catch.hpp>")
wrong(ui/map2d/probe.cpp "#include \"app/commands.hpp\"")
wrong(ui/map2d/probe.cpp "#include <V3d_View.hxx>")
wrong(app/probe.cpp "#include <Message.hxx>")

right(geometry/probe.cpp "#include <gp_Pnt.hxx>")
right(geometry/occt/probe.hpp "#include <Geom_BSplineSurface.hxx>")
right(geometry/probe.cpp "#include <Eigen/Core>")
right(core/units/probe.cpp "#include \"geometry/surface.hpp\"")
right(core/units/probe.cpp "#include <spdlog/spdlog.h>")
right(ui/view3d/probe.hpp "#include <V3d_View.hxx>")
right(ui/map2d/probe.cpp "#include <QWidget>")

file(REMOVE_RECURSE "${copy}")
