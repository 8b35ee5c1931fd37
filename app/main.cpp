#include "app/command_line.hpp"
#include "app/commands.hpp"
#include "app/window_command.hpp"

#include <spdlog/sinks/stdout_color_sinks.h>
#include <spdlog/spdlog.h>

#include <exception>
#include <iostream>
#include <string>
#include <unistd.h>
#include <variant>
#include <vector>

int main(int argc, char** argv) {
    using namespace sheerlay::app;
    try {
        // What the libraries remark must not stand among the data on standard output.
        spdlog::set_default_logger(spdlog::stderr_color_mt("sheerlay"));
        const std::vector<std::string> arguments(argv + (argc > 0 ? 1 : 0), argv + argc);
        const auto line = readCommandLine(arguments);
        if (const auto* answer = std::get_if<Answer>(&line)) {
            std::cerr << answer->err;
            std::cout << answer->out << std::flush;
            return std::cout ? answer->exitCode : exitUnusable;
        }
        const auto& request = std::get<Request>(line);
        const Console console{std::cout, std::cerr, ::isatty(STDERR_FILENO) == 1};
        if (request.command == Command::Window)
            return openWindow(request, console, argc, argv);
        return runCommand(request, console);
    } catch (const std::exception& problem) {
        std::cerr << "Something went wrong inside the program: " << problem.what() << '\n';
    } catch (...) {
        std::cerr << "Something went wrong inside the program.\n";
    }
    return exitUnusable;
}
