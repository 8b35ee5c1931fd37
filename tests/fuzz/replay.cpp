// Runs a fuzz target over every file of a folder, for builds without libFuzzer.

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "usage: replay FOLDER\n";
        return 2;
    }
    std::size_t count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(argv[1])) {
        std::ifstream stream(entry.path(), std::ios::binary);
        const std::vector<char> bytes{std::istreambuf_iterator<char>(stream), {}};
        const std::vector<std::uint8_t> data(bytes.begin(), bytes.end());
        std::cerr << entry.path().filename() << '\n'; // the last one named is the one that broke
        LLVMFuzzerTestOneInput(data.data(), data.size());
        ++count;
    }
    std::cerr << count << " files\n";
    return count > 0 ? 0 : 1;
}
