#include "ui/settings/waited_work.h"

#include "ui/common/action_button.h"
#include "ui/common/look.h"

#include <QDialog>
#include <QEventLoop>
#include <QFutureWatcher>
#include <QLabel>
#include <QProgressBar>
#include <QPromise>
#include <QThreadPool>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <atomic>
#include <memory>

namespace chalk::ui::settings {

namespace {

constexpr int kPatienceMilliseconds = 300;
constexpr int kWaitBoxWidth = 420;
constexpr int kWholeWork = 1000;

/// A box without a way out but Stop: Esc and closing it are Stop too.
class WaitBox : public QDialog {
public:
    WaitBox(const common::Look& look, const QString& words, QWidget* parent) : QDialog(parent), m_bar(new QProgressBar(this))
    {
        setWindowTitle(words);
        setModal(true);
        setFixedWidth(qRound(look.theme().scaled(kWaitBoxWidth)));
        auto* label = new QLabel(words, this);
        label->setWordWrap(true);
        m_bar->setTextVisible(false);
        m_bar->setAccessibleName(words);
        m_bar->setRange(0, kWholeWork);
        auto* stop = new common::ActionButton(look, tr("Stop"), this);
        stop->setKeyText(tr("Esc"));
        connect(stop, &QPushButton::clicked, this, &QDialog::reject);
        auto* column = new QVBoxLayout(this);
        column->setContentsMargins(20, 20, 20, 20);
        column->setSpacing(14);
        column->addWidget(label);
        column->addWidget(m_bar);
        column->addWidget(stop, 0, Qt::AlignRight);
    }

    [[nodiscard]] QProgressBar& bar() { return *m_bar; }
    void reject() override { *isStopped = true; }

    std::shared_ptr<std::atomic_bool> isStopped = std::make_shared<std::atomic_bool>(false);

private:
    QProgressBar* m_bar;
};

}  // namespace

void runAndWait(const common::Look& look, QWidget* parent, const QString& words, const std::function<void(const store::Progress&)>& work)
{
    WaitBox box(look, words, parent);
    QFutureWatcher<void> watcher;
    QEventLoop loop;
    QObject::connect(&watcher, &QFutureWatcherBase::finished, &loop, &QEventLoop::quit);
    QObject::connect(&watcher, &QFutureWatcherBase::progressValueChanged, &box.bar(), &QProgressBar::setValue);
    auto promise = std::make_shared<QPromise<void>>();
    watcher.setFuture(promise->future());
    QThreadPool::globalInstance()->start([promise, &work, isStopped = box.isStopped] {
        promise->start();
        promise->setProgressRange(0, kWholeWork);
        work([&promise, &isStopped](int done, int of) {
            promise->setProgressValue(static_cast<int>(qint64(done) * kWholeWork / std::max(1, of)));
            return !*isStopped;
        });
        promise->finish();
    });
    QTimer patience;
    patience.setSingleShot(true);
    QObject::connect(&patience, &QTimer::timeout, &box, &QDialog::show);
    patience.start(kPatienceMilliseconds);
    while (!watcher.isFinished()) {
        loop.exec();
    }
}

}  // namespace chalk::ui::settings
