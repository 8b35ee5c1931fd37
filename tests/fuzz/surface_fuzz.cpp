#include "core/surfaces/read_surface.hpp"
#include "geometry/occt/surface_file.hpp"
#include "tests/fuzz/corrections_first.hpp"
#include "tests/support/scratch_file.hpp"

#include <fstream>

using namespace sheerlay;

/// The reader opens files by name, so each input becomes one. OpenCASCADE may break on it, in its own
/// process; this one must come back with faces or with words.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using Read = Expected<core::ReadTable, std::vector<core::FileMessage>>;
    test::readCorrected(
        data,
        size,
        [](std::string_view text,
           const std::string& file,
           const std::string& name,
           const core::TableCorrections& corrections) -> Read {
            static const test::ScratchFile scratch("surface-fuzz");
            std::ofstream(scratch.path(), std::ios::binary) << text;
            const auto faces = geometry::readSurfaceFile(scratch.path());
            if (faces)
                return core::readSurface(*faces, file, name, corrections);
            test::promise(!faces.error().found.empty() && !faces.error().would.empty(), "a refusal says why");
            return unexpected(
                std::vector{core::FileMessage{file, 0, "", faces.error().found, faces.error().would}});
        });
    return 0;
}
