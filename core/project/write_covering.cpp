#include "core/project/write_covering.hpp"

#include "core/project/written_value.hpp"

#include <array>
#include <string_view>

namespace sheerlay::core {

namespace {

std::string faceText(std::string_view name, const ClothFace& face, Units units) {
    constexpr std::array lays{"\"fewest\"", "\"drape\"", "\"centre-overlap\""};
    std::string text = "\n[covering." + std::string(name) + "]\n";
    text += "cloth = \"" + steadyDigits(face.cloth) + " g\"\n";
    text += "roll = " + writtenLength(face.roll, units) + "\n";
    text += std::string("lay = ") + lays.at(static_cast<std::size_t>(face.lay)) + "\n";
    text += "overlap = " + writtenLength(face.overlap, units) + "\n";
    text += "overhang = " + writtenLength(face.overhang, units) + "\n";
    text += "coats = " + std::to_string(face.coats) + "\n";
    return text;
}

std::string bulkheadsText(const BulkheadCloth& c, Units units) {
    std::string text = "\n[covering.bulkheads]\n";
    text += "cloth = \"" + steadyDigits(c.cloth) + " g\"\n";
    text += "roll = " + writtenLength(c.roll, units) + "\n";
    text += "lap = " + writtenLength(c.lap, units) + "\n";
    text += "coats = " + std::to_string(c.coats) + "\n";
    text += std::string("faces = ") + (c.faces == BulkheadCloth::Faces::Both ? "\"both\"" : "\"one\"") + "\n";
    return text;
}

} // namespace

std::string coveringText(const CoveringChoices& c, Units units) {
    std::string text = "\n[covering]\n";
    const auto line = [&text](std::string_view key, const std::string& value) {
        text += std::string(key) + " = " + value + "\n";
    };
    line("seal", c.seal ? "true" : "false");
    if (c.mix)
        line("mix",
             "{ resin = " + shortestDigits(c.mix->resin) + ", hardener = " + shortestDigits(c.mix->hardener) +
                 ", by = " + (c.mix->byWeight ? "\"weight\"" : "\"volume\"") + " }");
    if (c.potLife)
        line("pot-life", shortestDigits(*c.potLife));
    line("pace", shortestDigits(c.pace));
    line("waste", shortestDigits(c.waste));
    line("wet-out", shortestDigits(c.wetOut));
    line("fill-coat", shortestDigits(c.fillCoat));
    line("seal-coat", shortestDigits(c.sealCoat));
    line("cloth-spare", shortestDigits(c.clothSpare));
    line("liquid-density", shortestDigits(c.liquidDensity));
    line("cured-density", shortestDigits(c.curedDensity));
    line("sanded", shortestDigits(c.sanded));
    line("give", shortestDigits(c.give));
    line("glue-spread", shortestDigits(c.glueSpread));
    line("fillet-radius", writtenLength(c.fillet, units));
    line("varnish-coats", std::to_string(c.varnishCoats));
    line("varnish-spread", shortestDigits(c.varnishSpread));
    line("varnish-film", shortestDigits(c.varnishFilm));
    if (c.outside)
        text += faceText("outside", *c.outside, units);
    if (c.inside)
        text += faceText("inside", *c.inside, units);
    if (c.bulkheads)
        text += bulkheadsText(*c.bulkheads, units);
    return text;
}

} // namespace sheerlay::core
