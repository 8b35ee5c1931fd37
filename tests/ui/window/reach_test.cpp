#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/choices/choices_panel.hpp"
#include "ui/panels/offsets_grid.hpp"
#include "ui/panels/table_tools.hpp"
#include "ui/shop/girth_panel.hpp"
#include "ui/shop/shop_mode.hpp"
#include "ui/window/keys_card.hpp"
#include "ui/window/lines_bench.hpp"
#include "ui/window/new_boat.hpp"
#include "ui/window/sheets_bench.hpp"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QRegularExpression>
#include <QTest>
#include <QToolButton>

#include <functional>
#include <set>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

const QByteArray tables = R"(
[stock]
[[stock.lot]]
nominal = "1x6"
length = "12 ft"
defects = [["2-6-0", "2-9-4"]]
[[stock.wood-rule]]
wood = "northern-white-cedar"
rows = [4, 10]
every = 3
[[stock.lot]]
nominal = "1x6"
length = "12 ft"
wood = "northern-white-cedar"
[moulds]
holes = { pitch = "4 in", inset = "1 in", diameter = "3/8 in" }
[[moulds.sheet]]
length = "8 ft"
width = "4 ft"
[fitout.gunwales]
stand = "square"
[covering]
[covering.outside]
cloth = "6 oz"
[afloat]
[[afloat.load]]
name = "paddler"
weight = "170 lb"
x = "7-6-0"
height = "16 in"
[[journal.laid]]
strip = "S01"
)";

/// Something a builder can press, type into or choose from.
bool isControl(const QWidget& widget) {
    for (const QWidget* outer = widget.parentWidget(); outer != nullptr; outer = outer->parentWidget())
        if (qobject_cast<const QAbstractSpinBox*>(outer) != nullptr ||
            qobject_cast<const QComboBox*>(outer) != nullptr ||
            qobject_cast<const QLineEdit*>(outer) != nullptr ||
            qobject_cast<const QAbstractItemView*>(outer) != nullptr)
            return false; // a part of a control
    return qobject_cast<const QAbstractButton*>(&widget) != nullptr ||
           qobject_cast<const QLineEdit*>(&widget) != nullptr ||
           qobject_cast<const QPlainTextEdit*>(&widget) != nullptr ||
           qobject_cast<const QComboBox*>(&widget) != nullptr ||
           qobject_cast<const QAbstractSpinBox*>(&widget) != nullptr ||
           (qobject_cast<const QAbstractSlider*>(&widget) != nullptr && !widget.inherits("QScrollBar")) ||
           qobject_cast<const QAbstractItemView*>(&widget) != nullptr;
}

QString spokenName(const QWidget& widget) {
    if (!widget.accessibleName().isEmpty())
        return widget.accessibleName();
    const auto* button = qobject_cast<const QAbstractButton*>(&widget);
    return button != nullptr ? button->text() : QString();
}

/// Its tooltip ends with the key that does the same, or is the sign it types.
bool hasKey(const QWidget& widget) {
    static const QRegularExpression key(
        QStringLiteral("\\(([A-Z1-9]|F1|F11|Esc|Enter|Space|Home|End|Left|Right|Backspace|arrows|(left|right)"
                       " arrow)([,;].*)?\\)$"));
    return key.match(widget.toolTip()).hasMatch() || widget.toolTip().size() == 1 ||
           widget.toolTip() == QStringLiteral("Space");
}

/// Every control that is there to be used has a name that is spoken, says what it is for, and is
/// reached with Tab or by a key of its own.
void look(const QWidget& shown, const std::string& where, std::set<const QWidget*>& seen) {
    for (const QWidget* widget : shown.findChildren<QWidget*>()) {
        if (!isControl(*widget) || !widget->isVisible() || !widget->isEnabled() ||
            !seen.insert(widget).second)
            continue;
        INFO(where << ": " << widget->metaObject()->className() << " \"" << spokenName(*widget).toStdString()
                   << "\" in " << widget->parentWidget()->metaObject()->className() << ", tip \""
                   << widget->toolTip().toStdString() << "\"");
        CHECK_FALSE(spokenName(*widget).isEmpty());
        if (qobject_cast<const QAbstractItemView*>(widget) == nullptr) // its items have their own
            CHECK_FALSE(widget->toolTip().isEmpty());
        CHECK(((widget->focusPolicy() & Qt::TabFocus) != 0 || hasKey(*widget)));
    }
}

void unfold(ChoicesPanel& form) {
    for (const QString& group : form.groups())
        form.fold(group, false);
}

} // namespace

TEST_CASE_METHOD(App, "every control of every bench, form and mode is named, explained and within reach") {
    Workshop shop;
    MainWindow& window = shop.window;
    window.show();
    shop.rewrite(shop.good + tables);
    std::set<const QWidget*> seen;
    using Bench = MainWindow::Bench;
    const auto at = [&](const char* where, Bench bench, const std::function<void()>& set = {}) {
        window.showBench(bench);
        if (set)
            set();
        QApplication::processEvents();
        look(window, where, seen);
    };
    at("lines", Bench::Lines);
    at("scaling", Bench::Lines, [&] {
        window.lines()->grid()->chooseDoubtful();
        window.lines()->tools()->showScale(true);
    });
    at("planking", Bench::Planking);
    at("finding in hand", Bench::Planking, [&] { shop.bench().nextFinding(); });
    at("how she is planked", Bench::Planking, [&] { shop.bench().showControls(true); });
    at("start lines side by side", Bench::Planking, [&] { shop.bench().compareStarts(); });
    at("tape", Bench::Planking, [&] { shop.bench().measure(true); });
    for (const auto& [name, bench, pages] :
         {std::tuple{"moulds", Bench::Moulds, window.moulds()},
          std::tuple{"stock", Bench::Stock, window.stock()},
          std::tuple{"sheets", Bench::Sheets, window.sheets()},
          std::tuple{"fitting out", Bench::FittingOut, window.fittingOut()}}) {
        at(name, bench);
        if (ChoicesPanel* form = pages->choices())
            at(name, bench, [&] {
                pages->showChoices(true);
                unfold(*form);
            });
    }
    at("afloat", Bench::FittingOut, [&] { window.fittingOut()->showAfloat(true); });
    at("journal", Bench::Journal);
    at("keys", Bench::Journal, [&] { window.keys()->turn(); });
    window.enterShop();
    look(*window.shop(), "shop", seen);
    window.shop()->girthTarget()->click();
    look(*window.shop(), "girths in the shop", seen);
    window.newBoat()->show();
    look(*window.newBoat(), "a boat begun", seen);
    CHECK(seen.size() > 200);

    const MainWindow empty(TaskRunner::Mode::SameThread);
    const_cast<MainWindow&>(empty).show();
    look(empty, "no project", seen);
}
