#include "core/solids/mould_boards.hpp"
#include "geometry/mesh.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <cmath>

using namespace sheerlay;
using namespace sheerlay::test;

namespace {

/// Whether a board's face ends at half-breadth y, height z.
bool touches(const core::NamedBoard& board, double y, double z) {
    for (const auto& side : board.board.boundary)
        for (const Eigen::Vector3d& p : side)
            if (std::abs(p.y() - y) < 0.05 && std::abs(p.z() - z) < 0.05)
                return true;
    return false;
}

} // namespace

TEST_CASE("a mould that a stem form goes through stands as two halves, the form between them") {
    const core::Project project = projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay");
    auto hull = core::loft(project);
    REQUIRE(hull);
    auto set = core::mouldsOf(project, *hull);
    REQUIRE(set);
    const auto boards = core::mouldBoards(*set);
    std::size_t at = 0;
    for (const core::Mould& mould : set->moulds)
        for (const double side : {1.0, -1.0}) {
            if (side < 0.0 && mould.stemCut == 0.0)
                continue; // one board
            REQUIRE(at < boards.size());
            const core::NamedBoard& board = boards[at++];
            INFO(board.name);
            CHECK(board.name.starts_with("Mould " + mould.name));
            CHECK(touches(board, side * mould.edge.front().at.x(), mould.sheer));
            CHECK(touches(board, -side * mould.edge.front().at.x(), mould.sheer) == (mould.stemCut == 0.0));
            CHECK(touches(board, side * mould.legHalfBreadth, mould.foot));
            CHECK_THAT(board.board.through.norm(), WithinAbs(mould.thickness, 1e-9));
        }
    CHECK(boards.size() == at + set->stemForms.size() + set->transoms.size());
    REQUIRE_FALSE(set->stemForms.empty());
    for (std::size_t i = 0; i < set->stemForms.size(); ++i) {
        const geometry::Mesh mesh = geometry::boardMesh(boards[at + i].board);
        double low = 0.0, high = 0.0;
        for (const Eigen::Vector3d& p : mesh.points) {
            low = std::min(low, p.y());
            high = std::max(high, p.y());
        }
        CHECK_THAT(high - low, WithinAbs(set->stemForms[i].thickness, 1e-9));
        CHECK_THAT(high + low, WithinAbs(0.0, 1e-9)); // amidships
    }
}

TEST_CASE("a transom lies in the plane where the planking ends and reaches into the boat") {
    const core::Project project = projectAt(SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay");
    auto hull = core::loft(project);
    REQUIRE(hull);
    const auto set = core::mouldsOf(project, *hull);
    REQUIRE(set);
    REQUIRE_FALSE(set->transoms.empty());
    const core::TransomForm& form = set->transoms.back();
    const core::NamedBoard board = core::mouldBoards(*set).back();
    for (const auto& side : board.board.boundary)
        for (const Eigen::Vector3d& p : side)
            CHECK_THAT(p.x(), WithinAbs(form.xAtSheer + form.slope * (p.z() - form.sheerHeight), 1e-6));
    CHECK(board.board.through.x() * (form.end == core::End::Bow ? 1.0 : -1.0) > 0.0);
    CHECK_THAT(board.board.through.norm(), WithinAbs(form.thickness, 1e-9));
    // square to the face
    CHECK_THAT(board.board.through.z(), WithinAbs(-form.slope * board.board.through.x(), 1e-9));
}
