#include "geometry/occt/own_process.hpp"

#include <Standard_Failure.hxx>

#include <array>
#include <cerrno>
#include <csignal>
#include <exception>
#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>
#include <utility>

namespace sheerlay::geometry {
namespace {

constexpr char whole = '.'; // last byte of a work that came to its end

bool writeAll(int to, const std::string& bytes) {
    std::size_t done = 0;
    while (done < bytes.size()) {
        const ssize_t n = ::write(to, bytes.data() + done, bytes.size() - done);
        if (n < 0 && errno != EINTR)
            return false;
        done += n > 0 ? static_cast<std::size_t>(n) : 0;
    }
    return true;
}

std::string readAll(int from) {
    std::string bytes;
    std::array<char, 1U << 16U> part{};
    for (;;) {
        const ssize_t n = ::read(from, part.data(), part.size());
        if (n > 0)
            bytes.append(part.data(), static_cast<std::size_t>(n));
        else if (n == 0 || errno != EINTR)
            return bytes;
    }
}

[[noreturn]] void workAndEnd(const std::function<std::string()>& work, int to, unsigned seconds) {
    for (const int signal : {SIGSEGV, SIGBUS, SIGFPE, SIGILL, SIGABRT, SIGALRM, SIGTERM})
        std::signal(signal, SIG_DFL); // whoever watches this program shall not report for the copy
    const int nowhere = ::open("/dev/null", O_WRONLY);
    ::dup2(nowhere, STDOUT_FILENO);
    ::dup2(nowhere, STDERR_FILENO);
    ::alarm(seconds);
    bool done = false;
    try {
        done = writeAll(to, work() + whole);
    } catch (const Standard_Failure&) {
        done = false;
    } catch (const std::exception&) {
        done = false;
    }
    ::_exit(done ? 0 : 1);
}

} // namespace

std::optional<std::string>
inOwnProcess(const std::function<std::string()>& work, unsigned seconds, std::stop_token stop) {
    std::array<int, 2> ends{};
    if (::pipe(ends.data()) != 0)
        return std::nullopt;
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        workAndEnd(work, ends[1], seconds);
    }
    ::close(ends[1]);
    std::string bytes;
    if (child > 0) {
        // gone before the child is waited for, so that no other process can have its number by then
        const std::stop_callback end(std::move(stop), [child] { ::kill(child, SIGKILL); });
        bytes = readAll(ends[0]);
    }
    ::close(ends[0]);
    int state = 0;
    while (child > 0 && ::waitpid(child, &state, 0) < 0 && errno == EINTR)
        continue;
    if (bytes.empty() || bytes.back() != whole)
        return std::nullopt;
    bytes.pop_back();
    return bytes;
}

} // namespace sheerlay::geometry
