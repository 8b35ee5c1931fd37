#include "core/outlines/drawn_sections.hpp"
#include "core/project/project_file.hpp"
#include "tests/fuzz/corrections_first.hpp"
#include "tests/fuzz/promise.hpp"

using namespace sheerlay;
using sheerlay::test::promise;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto input = test::correctionsFirst(data, size);
    if (!input.corrections)
        return 0;
    const auto read = core::readSections(input.rest, "fuzz", "Fuzz", *input.corrections);
    promise(read.has_value() || !read.error().empty(), "a drawing that is refused is refused with a message");
    if (read)
        promise(core::parseProject(read->projectText, "fuzz.sheerlay").has_value(),
                "the project of a drawing can be read");
    return 0;
}
