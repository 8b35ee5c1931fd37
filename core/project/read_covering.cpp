#include "core/project/read_covering.hpp"

#include "core/project/ranged_length.hpp"
#include "core/project/ranged_number.hpp"
#include "core/units/length_text.hpp"
#include "core/units/weight.hpp"
#include "core/words/say.hpp"

#include <string>
#include <string_view>

namespace sheerlay::core {

namespace {

constexpr LengthRange rolls{100.0, 4000.0};
constexpr LengthRange overlaps{0.0, 500.0};
constexpr LengthRange filletRadii{0.0, 100.0};
constexpr std::string_view faceForm = "a table with cloth = \"6 oz\" or \"200 g\"";
constexpr LengthRange laps{0.0, 200.0};
constexpr std::string_view mixForm =
    "{ resin = 3, hardener = 1, by = \"volume\" } or \"weight\", as the maker prints it";

void take(double& value, TableView& view, std::string_view key, const NumberRange& range, Reading& reading) {
    value = rangedNumber(view, key, range, reading).value_or(value);
}
void take(int& count, TableView& view, std::string_view key, const NumberRange& range, Reading& reading) {
    count = rangedCount(view, key, range, reading).value_or(count);
}

void takeCloth(double& cloth, double& roll, TableView& view, Reading& reading) {
    if (const auto told = view.text("cloth", Need::Required, "\"6 oz\" or \"200 g\"")) {
        if (const auto weight = parseClothWeight(*told))
            cloth = *weight;
        else
            reading.messages.error(
                view.lineOfKey("cloth"), view.keyOf("cloth"), weight.error().found, weight.error().would);
    }
    takeLength(roll, view, "roll", Need::Optional, rolls, reading);
}

constexpr NumberRange rolledCoats{0, 10, sayable("a count of rolled coats after the wet-out")};

ClothFace clothFace(TableView& view, int coats, Reading& reading) {
    ClothFace face;
    face.coats = coats;
    takeCloth(face.cloth, face.roll, view, reading);
    takeLength(face.overlap, view, "overlap", Need::Optional, overlaps, reading);
    takeLength(face.overhang, view, "overhang", Need::Optional, overlaps, reading);
    face.lay = view.choice<ClothLay>("lay",
                                     Need::Optional,
                                     {{"fewest", ClothLay::Fewest},
                                      {"drape", ClothLay::Drape},
                                      {"centre-overlap", ClothLay::CentreOverlap}})
                   .value_or(ClothLay::Fewest);
    take(face.coats, view, "coats", rolledCoats, reading);
    view.reportUnknown();
    return face;
}

BulkheadCloth bulkheadCloth(TableView& view, Reading& reading) {
    using Faces = BulkheadCloth::Faces;
    BulkheadCloth c;
    takeCloth(c.cloth, c.roll, view, reading);
    takeLength(c.lap, view, "lap", Need::Optional, laps, reading);
    take(c.coats, view, "coats", rolledCoats, reading);
    c.faces = view.choice<Faces>("faces", Need::Optional, {{"one", Faces::One}, {"both", Faces::Both}})
                  .value_or(c.faces);
    view.reportUnknown();
    return c;
}

std::optional<MixParts> mixParts(TableView& view, Reading& reading) {
    MixParts mix;
    const NumberRange parts{0.01, 1000, mixForm};
    for (const auto& [key, value] : {std::pair{"resin", &mix.resin}, std::pair{"hardener", &mix.hardener}}) {
        if (view.has(key))
            take(*value, view, key, parts, reading);
        else
            (void)view.find(key, Need::Required, mixForm);
    }
    mix.byWeight =
        view.choice<bool>("by", Need::Required, {{"volume", false}, {"weight", true}}).value_or(false);
    view.reportUnknown();
    return mix;
}

} // namespace

std::optional<CoveringChoices> readCovering(TableView& file, Reading& reading) {
    auto view = file.table("covering", Need::Optional, "a table [covering]");
    if (!view)
        return std::nullopt;
    CoveringChoices c;
    constexpr int coatsOutside = 3, coatsInside = 2; // Epoxyworks: the third is commonly left off inside
    if (auto face = view->table("outside", Need::Optional, faceForm))
        c.outside = clothFace(*face, coatsOutside, reading);
    if (auto face = view->table("inside", Need::Optional, faceForm))
        c.inside = clothFace(*face, coatsInside, reading);
    if (auto bulkheads = view->table("bulkheads", Need::Optional, faceForm))
        c.bulkheads = bulkheadCloth(*bulkheads, reading);
    if (auto mix = view->table("mix", Need::Optional, mixForm))
        c.mix = mixParts(*mix, reading);
    if (const toml::node* seal = view->find("seal", Need::Optional, "true or false")) {
        if (const auto* said = seal->as_boolean())
            c.seal = said->get();
        else
            reading.messages.error(
                lineOf(*seal), view->keyOf("seal"), describe(*seal, reading.source), "true or false");
    }
    c.potLife = rangedNumber(
        *view, "pot-life", {1, 600, sayable("the pot life in minutes, as the maker prints it")}, reading);
    const auto number =
        [&](std::string_view key, double& value, double least, double most, std::string_view form) {
            take(value, *view, key, {least, most, form}, reading);
        };
    number("pace", c.pace, 0.001, 10, sayable("square metres covered in a minute, such as 0.15"));
    number("waste", c.waste, 0, 1, "a part of the whole, such as 0.15");
    number("wet-out", c.wetOut, 0.1, 5, "litres to a kilogram of cloth, without waste, such as 0.888");
    number("fill-coat", c.fillCoat, 0.001, 1, "litres to a square metre, without waste, such as 0.0886");
    number("seal-coat", c.sealCoat, 0.001, 1, "litres to a square metre, such as 0.1");
    number("cloth-spare", c.clothSpare, 0, 1, "a part of the whole, such as 0.05");
    number("liquid-density", c.liquidDensity, 0.8, 2, "kilograms to a litre, such as 1.12");
    number("cured-density", c.curedDensity, 0.8, 2, "kilograms to a litre, such as 1.15");
    number("sanded", c.sanded, 0, 1, sayable("a part of the whole, such as 0.10"));
    number("give", c.give, 1, 60, "degrees, such as 20");
    number("glue-spread", c.glueSpread, 10, 1000, "grams to a square metre of glued face, such as 175");
    takeLength(c.fillet, *view, "fillet-radius", Need::Optional, filletRadii, reading);
    take(c.varnishCoats, *view, "varnish-coats", {0, 20, "a count of coats"}, reading);
    number("varnish-spread", c.varnishSpread, 1, 50, "square metres to a litre, such as 12.3");
    number("varnish-film", c.varnishFilm, 1, 500, "grams to a square metre left by a coat, such as 35");
    view->reportUnknown();
    return c;
}

} // namespace sheerlay::core
