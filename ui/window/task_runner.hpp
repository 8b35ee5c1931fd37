#pragma once

#include <QObject>
#include <QString>

#include <cstdint>
#include <functional>
#include <list>
#include <memory>
#include <stop_token>
#include <thread>
#include <utility>

namespace sheerlay::ui {

/// Runs one piece of long work at a time beside the window and brings its result back to the thread the
/// runner lives in. A newer run makes older ones stale: their results, progress and failures are dropped.
/// Destroying the runner asks all work to stop and waits for it.
class TaskRunner : public QObject {
    Q_OBJECT
public:
    /// SameThread does the work inside run(): for tests and for places without threads.
    enum class Mode { Thread, SameThread };
    using Progress = std::function<void(const QString&)>;
    using Failed = std::function<void(const QString&)>;

    explicit TaskRunner(Mode mode, QObject* parent = nullptr);
    ~TaskRunner() override;

    /// @param work    called on the worker: T(std::stop_token, const Progress&); may throw
    /// @param done    called with the result on the runner's thread
    /// @param failed  called on the runner's thread with what the exception said
    template <class Work, class Done> void run(Work work, Done done, Failed failed) {
        start(
            [work = std::move(work), done = std::move(done)](std::stop_token stop, const Progress& progress) {
                auto result = std::make_shared<decltype(work(stop, progress))>(work(stop, progress));
                return Delivery([result, done] { done(std::move(*result)); });
            },
            std::move(failed));
    }
    /// Asks what runs to stop and drops its result.
    void cancel();
    [[nodiscard]] bool busy() const noexcept { return m_busy; }
    /// Number of the newest run; every run and every cancel raises it.
    [[nodiscard]] std::uint64_t revision() const noexcept { return m_revision; }

Q_SIGNALS:
    void progress(const QString& text);
    void busyChanged(bool busy);

private:
    using Delivery = std::function<void()>;
    using Job = std::function<Delivery(std::stop_token, const Progress&)>;
    struct Worker {
        std::uint64_t revision = 0;
        std::jthread thread;
    };

    void start(Job job, Failed failed);
    void finish(std::uint64_t revision, const Delivery& delivery);
    void setBusy(bool busy);

    Mode m_mode;
    bool m_busy = false;
    std::uint64_t m_revision = 0;
    std::list<Worker> m_workers;
};

} // namespace sheerlay::ui
