#pragma once

#include <string>
#include <vector>

namespace sheerlay::core {

/// What the tape said at one station.
struct GirthLeft {
    double x = 0.0;           ///< mm, in the table's own datum
    double girth = 0.0;       ///< mm along the mould, from the row's lower edge to the centreline
    std::string printedX;     ///< as written
    std::string printedGirth; ///< as written
    int line = 0;             ///< of the project file, from 1

    friend bool operator==(const GirthLeft&, const GirthLeft&) = default;
};

/// Which side of the boat a reading was taken on.
enum class ReadSide { Both, Starboard, Port };

/// One round with the tape. Row 0 is the round on the bare moulds, from the starting line to the centreline.
struct RowReading {
    int row = 0; ///< whose lower edge was measured from; counted from the start toward the keel
    ReadSide side = ReadSide::Both;
    std::vector<GirthLeft> girthLeft;
    double sd = 0.5; ///< mm, how far a single reading may be off (standard deviation); 0.3 with care
    std::string date;
    int line = 0;

    friend bool operator==(const RowReading&, const RowReading&) = default;
};

/// A strip that is on the boat.
struct LaidStrip {
    std::string strip; ///< Strip::id
    std::string date;
    std::string note;
    int line = 0;

    friend bool operator==(const LaidStrip&, const LaidStrip&) = default;
};

/// What was really laid.
struct Journal {
    std::vector<RowReading> readings; ///< in the order of the file
    std::vector<LaidStrip> laid;

    friend bool operator==(const Journal&, const Journal&) = default;
};

} // namespace sheerlay::core
