#pragma once

#include <optional>

namespace sheerlay::core {

/// How cloth lies on one face: in one drape over the keel, or a piece a side with an overlap along it.
enum class ClothLay { Fewest, Drape, CentreOverlap };

/// Cloth and coats of one face, outside or inside. Figures: tests/reference/glass_epoxy.md.
struct ClothFace {
    double cloth = 0.0;              ///< g/m2, > 0
    double roll = 1270.0;            ///< mm, width of the roll; 50 in, a supplier's guide
    ClothLay lay = ClothLay::Fewest; ///< as few pieces as the roll allows
    double overlap = 50.8;           ///< mm, 2 in, from memory; guides 1 to 4 in
    double overhang = 101.6;         ///< mm past sheer and stems; 4 in, a builder's log
    int coats = 3;                   ///< rolled after the wet-out

    friend bool operator==(const ClothFace&, const ClothFace&) = default;
};

/// Cloth over bulkheads, turned out onto the hull all round. Common practice, no source, but where told.
struct BulkheadCloth {
    enum class Faces { One, Both }; ///< the face toward amidships, or the one toward the end as well

    double cloth = 0.0;   ///< g/m2, > 0
    double roll = 1270.0; ///< mm, width of the roll; as ClothFace
    double lap = 50.8;    ///< mm turned out onto the hull, along the sides and the bottom
    int coats = 1;        ///< rolled after the wet-out
    Faces faces = Faces::One;

    friend bool operator==(const BulkheadCloth&, const BulkheadCloth&) = default;
};

/// How resin and hardener are mixed, as the maker prints it.
struct MixParts {
    double resin = 0.0, hardener = 0.0; ///< parts, > 0
    bool byWeight = false;              ///< else by volume

    friend bool operator==(const MixParts&, const MixParts&) = default;
};

/// Epoxyworks, B. Niederer, "Estimating epoxy amounts": gallons = ft2 (0.00085 W + 0.0075) with W in oz/yd2,
/// wet-out and three rolled coats, 15 percent waste in it. 1 gal = 3.785411784 L, 1 ft2 = 0.09290304 m2, 1
/// oz/yd2 = 0.45359237 / 16 / 0.83612736 kg/m2.
inline constexpr double publishedWetOut =
    0.00085 * 3.785411784 / 0.09290304 / (0.45359237 / 16 / 0.83612736) / 1.15; ///< L/kg of cloth, net
inline constexpr double publishedFillCoat =
    0.0075 * 3.785411784 / 0.09290304 / 3 / 1.15; ///< L/m2 a coat, net

/// Cloth, resin and varnish. Litres and kilograms are of mixed resin; figures net of waste unless told.
struct CoveringChoices {
    std::optional<ClothFace> outside, inside;
    std::optional<BulkheadCloth> bulkheads;
    bool seal = false;                   ///< a coat on the bare wood first
    std::optional<MixParts> mix;         ///< none: no parts are told; never assumed
    std::optional<double> potLife;       ///< minutes; none: no batches are told
    double pace = 0.15;                  ///< m2 wetted out or rolled in a minute, one pair of hands; judged
    double waste = 0.15;                 ///< a part; the published formula's 15 percent
    double wetOut = publishedWetOut;     ///< L to a kg of cloth, net
    double fillCoat = publishedFillCoat; ///< L/m2 a coat, net
    double sealCoat = 0.1;               ///< L/m2; 100 to 150 g/m2, from memory
    double clothSpare = 0.05;            ///< a part bought beyond the pieces; 5 percent, from memory
    double liquidDensity = 1.12;         ///< kg/L, to buy by
    double curedDensity = 1.15;          ///< kg/L, to weigh by
    double sanded = 0.10;                ///< part of the fill coats sanded away; from memory
    double give = 20.0;                  ///< degrees the weave slides before it wrinkles; judged
    double glueSpread = 175.0;           ///< g/m2 of glued face; 150 to 200, from memory
    double fillet = 12.7;                ///< mm, radius round a bulkhead; 0: none; common practice, no source
    int varnishCoats = 3;                ///< at least 3, a supplier's advice
    double varnishSpread = 12.3;         ///< m2/L a coat; 500 ft2/gal, the middle of published figures
    double varnishFilm = 35.0;           ///< g/m2 a coat left on the boat; derived

    friend bool operator==(const CoveringChoices&, const CoveringChoices&) = default;
};

} // namespace sheerlay::core
