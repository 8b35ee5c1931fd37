#include "ui/window/task_runner.hpp"

#include "ui/view3d/exception_text.hpp"

#include <algorithm>

#ifdef __linux__
#include <sys/resource.h>
#endif

namespace sheerlay::ui {
namespace {

/// Lets the window go first where there are fewer processors than threads: Linux keeps this for the thread
/// that asks and for those it starts, not for the whole program.
void stepBack() {
#ifdef __linux__
    constexpr int behind = 10, last = 19;
    setpriority(PRIO_PROCESS, 0, std::min(last, getpriority(PRIO_PROCESS, 0) + behind));
#endif
}

} // namespace

TaskRunner::TaskRunner(Mode mode, QObject* parent) : QObject(parent), m_mode(mode) {}

TaskRunner::~TaskRunner() {
    for (Worker& worker : m_workers)
        worker.thread.request_stop();
    m_workers.clear(); // joins
}

void TaskRunner::setBusy(bool busy) {
    if (busy == m_busy)
        return;
    m_busy = busy;
    Q_EMIT busyChanged(busy);
}

void TaskRunner::cancel() {
    ++m_revision;
    for (Worker& worker : m_workers)
        worker.thread.request_stop();
    setBusy(false);
}

void TaskRunner::finish(std::uint64_t revision, const Delivery& delivery) {
    // the worker has posted this as its last act, so joining it takes no time
    m_workers.remove_if([revision](const Worker& worker) { return worker.revision == revision; });
    if (revision != m_revision)
        return;
    setBusy(false);
    delivery();
}

void TaskRunner::start(Job job, Failed failed) {
    cancel();
    const std::uint64_t revision = m_revision;
    setBusy(true);
    const auto perform = [job = std::move(job), failed = std::move(failed)](
                             std::stop_token stop, const Progress& tell) -> Delivery {
        try {
            return job(stop, tell);
        } catch (...) {
            const QString text = QString::fromStdString(currentExceptionText());
            return [failed, text] { failed(text); };
        }
    };
    if (m_mode == Mode::SameThread) {
        const Delivery delivery =
            perform(std::stop_token(), [this](const QString& text) { Q_EMIT progress(text); });
        finish(revision, delivery);
        return;
    }
    m_workers.push_back(
        {revision, std::jthread([this, revision, perform](std::stop_token stop) {
             stepBack();
             const Progress tell = [this, revision](const QString& text) {
                 QMetaObject::invokeMethod(
                     this,
                     [this, revision, text] {
                         if (revision == m_revision)
                             Q_EMIT progress(text);
                     },
                     Qt::QueuedConnection);
             };
             const Delivery delivery = perform(stop, tell);
             QMetaObject::invokeMethod(
                 this, [this, revision, delivery] { finish(revision, delivery); }, Qt::QueuedConnection);
         })});
}

} // namespace sheerlay::ui
