#include "ui/begin/file_output.hpp"

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <sys/stat.h>
#include <unistd.h>

namespace sheerlay::ui {

namespace {

constexpr mode_t newFileMode = 0666; // before the umask
constexpr mode_t permissionBits = 07777;

std::string cannot(const std::string& path, int error) {
    return path + ": it can't be written: " + std::strerror(error) + ".";
}

/// Writes all of the text. @return 0 or errno
int writeAll(int file, std::string_view text) {
    while (!text.empty()) {
        const ssize_t written = ::write(file, text.data(), text.size());
        if (written < 0) {
            if (errno == EINTR)
                continue;
            return errno;
        }
        text.remove_prefix(static_cast<std::size_t>(written));
    }
    return 0;
}

/// Opens, writes, closes. @return 0 or errno
int writeTo(const std::string& path, int flags, std::string_view text) {
    const int file = ::open(path.c_str(), O_WRONLY | O_CLOEXEC | flags, newFileMode);
    if (file < 0)
        return errno;
    int error = writeAll(file, text);
    if (error == 0 && (flags & O_CREAT) != 0 && ::fsync(file) != 0)
        error = errno;
    if (::close(file) != 0 && error == 0)
        error = errno;
    return error;
}

/// A name beside the file that nobody else uses.
std::string neighbour(const std::string& path) {
    return path + "." + std::to_string(::getpid()) + ".part";
}

} // namespace

std::optional<std::string> writeFile(const std::string& path, std::string_view text) {
    struct stat there {};
    const bool exists = ::stat(path.c_str(), &there) == 0;
    if (exists && S_ISDIR(there.st_mode))
        return cannot(path, EISDIR);
    if (exists && !S_ISREG(there.st_mode)) {
        const int error = writeTo(path, 0, text);
        return error == 0 ? std::nullopt : std::optional(cannot(path, error));
    }
    std::string target = path;
    if (exists) {
        std::error_code unresolved;
        target = std::filesystem::canonical(path, unresolved).string();
        if (unresolved)
            return cannot(path, unresolved.value());
        if (::access(target.c_str(), W_OK) != 0) // renaming would get around a write-protected file
            return cannot(path, errno);
    }
    const std::string part = neighbour(target);
    int error = writeTo(part, O_CREAT | O_EXCL, text);
    if (error == 0 && exists && ::chmod(part.c_str(), there.st_mode & permissionBits) != 0)
        error = errno;
    if (error == 0 && ::rename(part.c_str(), target.c_str()) != 0)
        error = errno;
    if (error == 0)
        return std::nullopt;
    if (error != EEXIST)
        ::unlink(part.c_str());
    return cannot(path, error);
}

std::optional<std::string> writeNewFile(const std::string& path, std::string_view text) {
    const auto taken = [&path] {
        return path + ": there is a file of this name already; it was left as it is. Choose another name.";
    };
    struct stat there {};
    if (::lstat(path.c_str(), &there) == 0)
        return taken();
    const std::string part = neighbour(path);
    int error = writeTo(part, O_CREAT | O_EXCL, text);
    // Unlike plain rename(2) this does not replace a file that someone made in the meantime.
    if (error == 0 && ::renameat2(AT_FDCWD, part.c_str(), AT_FDCWD, path.c_str(), RENAME_NOREPLACE) != 0) {
        error = errno;
        if (error == EEXIST) {
            ::unlink(part.c_str());
            return taken();
        }
        if (error == EINVAL || error == ENOSYS) // a file system that knows no such thing
            error = ::rename(part.c_str(), path.c_str()) == 0 ? 0 : errno;
    }
    if (error == 0)
        return std::nullopt;
    ::unlink(part.c_str());
    return cannot(path, error);
}

} // namespace sheerlay::ui
