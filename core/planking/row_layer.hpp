#pragma once

#include "core/planking/coverage.hpp"
#include "core/planking/measures.hpp"
#include "core/planking/plan.hpp"
#include "core/planking/row_cutter.hpp"
#include "core/planking/row_width.hpp"
#include "core/planking/stealer_bands.hpp"
#include "core/planking/thin_piece.hpp"
#include "geometry/graph_edge.hpp"
#include "geometry/parallels.hpp"

#include <vector>

namespace sheerlay::core {

inline constexpr int mostRows = 400;          ///< no boat has more on one side of the start
inline constexpr double columnSpacing = 20.0; ///< mm between the columns of a fan, along its master

/// Lays row after row from a start line and puts the strips, port and starboard, into a plan. Full rows are
/// exact parallels; after a tapered row the parallels start anew from its cut edge.
class RowLayer {
public:
    /// @param context, plan  must outlive the layer
    RowLayer(const LayingContext& context, Plan& plan)
        : m_context(&context), m_hull(context.part), m_plan(&plan), m_seams(*context.part) {}

    /// Lays every row on one side of the start line, until the hull is covered or the rows fold.
    /// @param widths  of the rows from the start outward; rows beyond the list, and empty ones, are full
    /// @param most    last row to lay, counted from the start
    /// @param first   number of the first row; its width is the first of `widths`
    /// @param bands   rows with stealers; one number for both strips
    /// @return the far edge of the last row laid
    std::vector<geometry::RowNode> rows(const geometry::EvenMaster& master,
                                        geometry::FanSide side,
                                        const std::vector<RowWidth>& widths = {},
                                        int most = mostRows,
                                        int first = 1,
                                        const std::vector<Band>& bands = {});

    /// This row's width is what was measured of it: its strips are not planed.
    void takeAsMeasured(int row) noexcept { m_measured = row; }

    /// Writes area and seams into the plan.
    void finish();

private:
    [[nodiscard]] const geometry::RowNode* folding(const RowMesh& mesh) const;
    void tellFolding(int row, double x);
    void tellShort() const;
    struct MeshPiece {
        RowPiece piece;
        const RowMesh* mesh = nullptr;
    };
    void lay(const std::vector<MeshPiece>& pieces, int row, geometry::FanSide side);
    void leaveOut(const RowPiece& thin, geometry::FanSide side);

    const LayingContext* m_context;
    const TrimmedSurface* m_hull;
    Plan* m_plan;
    SeamCheck m_seams;
    int m_measured = 0;     // row; 0: none
    double m_dropped = 0.0; // mm, widest piece too small to be wood that no strip runs on over
    int m_shortFrom = 0;    // row; 0: none stops short of the hull's end
    double m_shortX = 0.0;  // mm from the bow
    double m_takenIn = 0.0; // mm, widest that one does within the width it is milled to, and where
    double m_takenInX = 0.0;
    TakenIn m_overStock; // the widest that one would have to be beyond that width, and where
    double m_overStockX = 0.0;
    geometry::FanSide m_takenInSide = geometry::FanSide::TowardKeel;
};

} // namespace sheerlay::core
