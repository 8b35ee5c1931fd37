#include "core/project/laid_strips.hpp"

#include <algorithm>
#include <utility>

namespace sheerlay::core {

const LaidStrip* laidEntry(const Journal& journal, std::string_view strip) {
    const auto found = std::ranges::find(journal.laid, strip, &LaidStrip::strip);
    return found == journal.laid.end() ? nullptr : &*found;
}

Journal markLaid(Journal journal, std::string_view strip, std::string date) {
    if (laidEntry(journal, strip) == nullptr)
        journal.laid.push_back({std::string(strip), std::move(date), "", 0});
    return journal;
}

Journal unmarkLaid(Journal journal, std::string_view strip) {
    std::erase_if(journal.laid, [&](const LaidStrip& laid) { return laid.strip == strip; });
    return journal;
}

Journal noteOn(Journal journal, std::string_view strip, std::string note) {
    if (const auto found = std::ranges::find(journal.laid, strip, &LaidStrip::strip);
        found != journal.laid.end())
        found->note = std::move(note);
    return journal;
}

bool plansAlike(const Project& a, const Project& b) {
    Project other = b;
    other.journal.laid = a.journal.laid;
    other.putAside = a.putAside;
    other.language = a.language;
    other.paper = a.paper;
    return a == other;
}

bool stripsAlike(const Project& a, const Project& b) {
    return hullsAlike(a, b) && a.planking == b.planking && a.journal.readings == b.journal.readings &&
           a.units == b.units;
}

bool hullsAlike(const Project& a, const Project& b) {
    return a.hull == b.hull && a.strips == b.strips && a.planking.layOn == b.planking.layOn;
}

} // namespace sheerlay::core
