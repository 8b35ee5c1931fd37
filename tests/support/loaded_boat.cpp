#include "tests/support/loaded_boat.hpp"

namespace sheerlay::test {

const Planked& canoeToLoad() {
    static const Planked boat = planked(projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay"));
    return boat;
}

core::Project loaded(core::Project project) {
    core::CoveringChoices covering;
    covering.outside = covering.inside = core::ClothFace{};
    covering.outside->cloth = covering.inside->cloth = 203.4;
    covering.inside->coats = 2;
    covering.mix = core::MixParts{3, 1, false};
    covering.potLife = 25;
    project.covering = covering;
    core::AfloatChoices afloat;
    afloat.parts.push_back({"gunwales, seats and yoke", 5, 2438, 0, 300, 0});
    afloat.loads.push_back({"stern paddler", 80, 3540, 0, 330, 0});
    afloat.loads.push_back({"bow paddler", 70, 1140, 0, 330, 0});
    project.afloat = afloat;
    return project;
}

} // namespace sheerlay::test
