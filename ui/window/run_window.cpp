#include "ui/window/run_window.hpp"

#include "ui/map2d/planking_map.hpp"
#include "ui/panels/laying_bar.hpp"
#include "ui/panels/offsets_grid.hpp"
#include "ui/panels/table_tools.hpp"
#include "ui/shop/shop_mode.hpp"
#include "ui/view3d/boat_view.hpp"
#include "ui/view3d/exception_text.hpp"
#include "ui/window/keys_card.hpp"
#include "ui/window/language.hpp"
#include "ui/window/lines_bench.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/new_boat.hpp"
#include "ui/window/on_screen.hpp"
#include "ui/window/planking_bench.hpp"
#include "ui/window/project_desk.hpp"
#include "ui/window/sheets_bench.hpp"
#include "ui/window/style.hpp"

#include <QApplication>
#include <QElapsedTimer>
#include <QScreen>
#include <QSurfaceFormat>
#include <QTimer>
#include <QToolButton>

#include <spdlog/spdlog.h>

#include <algorithm>
#include <cstdio>
#include <memory>
#include <utility>

namespace sheerlay::ui {
namespace {

constexpr int restTime = 900; // ms until the boat's picture is surely drawn finely

/// No exception may cross Qt's event loop: it would end the program with the builder's work open.
class GuardedApplication : public QApplication {
public:
    using QApplication::QApplication;

    bool notify(QObject* receiver, QEvent* event) override {
        try {
            return QApplication::notify(receiver, event);
        } catch (...) {
            spdlog::error("something went wrong inside the program: {}", currentExceptionText());
            return false;
        }
    }
};

/// Takes the picture that SHEERLAY_SHOT asks for.
class Shot : public QObject {
public:
    Shot(MainWindow& window, QString path, QElapsedTimer since)
        : QObject(&window), m_window(window), m_path(std::move(path)), m_since(since) {
        connect(m_window.planking()->boatView(), &BoatView::drawn, this, [this] { drawn(); });
        connect(&m_window, &MainWindow::loaded, this, [this] { loaded(); });
    }

private:
    void drawn() {
        if (m_firstFrame < 0)
            m_firstFrame = m_since.elapsed();
        if (m_loaded)
            settle();
    }

    void loaded() {
        LayingBar* bar = m_window.planking()->bar();
        const QByteArray step = qgetenv("SHEERLAY_STEP");
        bool number = false;
        const int pieces = step.toInt(&number);
        if (number)
            bar->setLaid(pieces);
        else
            bar->last();
        QByteArray bench = qgetenv("SHEERLAY_BENCH");
        const bool form = bench.endsWith("-form");
        if (form)
            bench.chop(5);
        using Bench = MainWindow::Bench;
        for (const auto& [name, which] : {std::pair{"lines", Bench::Lines},
                                          std::pair{"moulds", Bench::Moulds},
                                          std::pair{"fitting-out", Bench::FittingOut},
                                          std::pair{"stock", Bench::Stock},
                                          std::pair{"sheets", Bench::Sheets},
                                          std::pair{"journal", Bench::Journal}})
            if (bench == name)
                m_window.showBench(which);
        if (bench == "afloat") {
            m_window.showBench(Bench::FittingOut);
            m_window.fittingOut()->showAfloat(true);
        }
        for (SheetsBench* pages : {m_window.moulds(), m_window.stock(), m_window.fittingOut()})
            if (form || bench != "afloat")
                pages->showChoices(form);
        if (bench == "table") {
            m_window.showBench(Bench::Lines);
            m_window.lines()->grid()->chooseDoubtful();
            m_window.lines()->tools()->showScale(true);
        }
        if (bench == "findings")
            m_window.planking()->nextFinding();
        if (bench == "tape") {
            m_window.planking()->measure(true);
            const core::TrimmedSurface& laid = m_window.boat()->hull.laid;
            for (const double part : {0.7, -0.4})
                Q_EMIT m_window.planking()->map()->touched(
                    {laid.halfGirthMaxX + part * 1000.0, part * laid.halfGirthMax});
        }
        if (bench == "keys")
            m_window.keys()->turn();
        if (bench == "controls" || bench == "compare")
            m_window.planking()->showControls(true);
        if (bench == "compare")
            m_window.planking()->compareStarts();
        if (bench == "begin") {
            m_window.newBoat()->show();
            m_window.newBoat()->takeFile(qEnvironmentVariable("SHEERLAY_FILE"));
        }
        if (bench.startsWith("shop")) {
            if (number)
                m_window.planking()->select(m_window.planking()->inHand());
            m_window.enterShop();
            m_window.shop()->setNight(bench == "shop-night");
            if (bench == "shop-girth")
                m_window.shop()->girthTarget()->click();
        }
        m_loaded = true;
        // where nothing is drawn in space no frame will be reported
        if (!m_window.planking()->boatView()->drawing() || !bench.isEmpty())
            settle();
    }

    void settle() {
        if (m_settling)
            return;
        m_settling = true;
        const qint64 boat = m_since.elapsed();
        rest(2 * restTime, boat); // some work begins only when the boat has stood still a while
    }

    /// Waits until all work beside the window has come to an end, then takes the picture.
    void rest(int wait, qint64 boat) {
        QTimer::singleShot(wait, this, [this, boat] {
            const auto runners = m_window.findChildren<TaskRunner*>();
            if (std::ranges::any_of(runners, &TaskRunner::busy)) {
                rest(restTime, boat);
                return;
            }
            QWidget& shown = m_window.shop()->isVisible()      ? static_cast<QWidget&>(*m_window.shop())
                             : m_window.newBoat()->isVisible() ? static_cast<QWidget&>(*m_window.newBoat())
                                                               : m_window;
            const bool saved = shown.grab().save(m_path);
            std::fprintf(stderr,
                         "first frame %lld ms, boat complete %lld ms\n",
                         static_cast<long long>(m_firstFrame),
                         static_cast<long long>(boat));
            QApplication::exit(saved ? 0 : 1);
        });
    }

    MainWindow& m_window;
    QString m_path;
    QElapsedTimer m_since;
    qint64 m_firstFrame = -1;
    bool m_loaded = false;
    bool m_settling = false;
};

/// The window, made anew in another language where one is chosen, on the same project.
class OneWindow : public QObject {
public:
    explicit OneWindow(QString path) : m_path(std::move(path)) { make(); }
    [[nodiscard]] MainWindow& window() const { return *m_window; }

    void begin() {
        if (!m_path.isEmpty())
            m_window->open(m_path);
        else
            m_window->welcome();
        if (const QScreen* screen = QGuiApplication::primaryScreen())
            m_window->resize(m_window->size().boundedTo(screen->availableSize()));
        new OnScreen(*m_window); // the frame takes room too, which is known once it stands
        m_window->show();
    }

private:
    void make() {
        m_window = std::make_unique<MainWindow>();
        connect(m_window.get(),
                &MainWindow::languageChosen,
                this,
                &OneWindow::changeLanguage,
                Qt::QueuedConnection);
    }

    void changeLanguage() {
        m_path = m_window->desk()->path();
        QGuiApplication::setQuitOnLastWindowClosed(false); // a new one follows
        if (m_window->close()) { // else the builder goes on working; the language is there at the next start
            speak();
            make();
            begin();
        }
        QGuiApplication::setQuitOnLastWindowClosed(true);
    }

    QString m_path;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace

int runWindow(int argc, char** argv, std::optional<std::string> projectPath) {
    QElapsedTimer since;
    since.start();
    // OpenCASCADE draws through GLX: under Wayland the window goes through XWayland
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "xcb");
    QSurfaceFormat format;
    format.setDepthBufferSize(24);
    format.setStencilBufferSize(8);
    format.setProfile(QSurfaceFormat::CompatibilityProfile);
    QSurfaceFormat::setDefaultFormat(format);
    QCoreApplication::setOrganizationName(QStringLiteral("Sheerlay"));
    QCoreApplication::setApplicationName(QStringLiteral("sheerlay"));

    GuardedApplication application(argc, argv);
    dress(application);
    speak();
    OneWindow one(projectPath ? QString::fromStdString(*projectPath) : QString());
    if (const QString shot = qEnvironmentVariable("SHEERLAY_SHOT"); !shot.isEmpty())
        new Shot(one.window(), shot, since);
    one.begin();
    return QApplication::exec();
}

} // namespace sheerlay::ui
