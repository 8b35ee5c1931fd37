#include "core/afloat/after_asides.hpp"

#include <utility>

namespace sheerlay::core {

AfterPlanking withAsides(AfterPlanking after, const std::vector<PutAside>& asides) {
    const auto mark = [&asides](std::vector<Finding>& findings) {
        findings = withAsides(std::move(findings), asides);
    };
    // no code is told by two parts, so that each entry covers the same finding here and in the list of all
    mark(after.findings);
    if (after.fitout)
        mark(after.fitout->findings);
    if (after.covering)
        mark(after.covering->findings);
    if (after.weights)
        mark(after.weights->findings);
    if (after.afloat)
        mark(after.afloat->findings);
    return after;
}

} // namespace sheerlay::core
