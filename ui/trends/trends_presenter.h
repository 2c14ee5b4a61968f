#pragma once

#include "ui/trends/trends_source.h"

#include <QFutureWatcher>
#include <QObject>

#include <memory>
#include <optional>

namespace chalk::ui::trends {

/// Reads trends beside the window's thread and keeps the last ones that could be read. Asked for others while it reads, it reads those afterwards and tells
/// nothing of the first.
class TrendsPresenter : public QObject {
    Q_OBJECT

public:
    explicit TrendsPresenter(std::unique_ptr<TrendsSource> source, QObject* parent = nullptr);
    /// Waits for a reading that is under way.
    ~TrendsPresenter() override;

    /// `loaded` or `failed` says when it is done.
    void ask(const TrendsAsk& ask);
    [[nodiscard]] bool isReading() const { return m_isReading; }
    /// The last that could be read; nothing before the first.
    [[nodiscard]] const TrendsView* view() const { return m_view ? &*m_view : nullptr; }

Q_SIGNALS:
    void begun();
    void loaded();
    /// The last view stays as it is.
    void failed(const QString& message);

private:
    using Reading = std::shared_ptr<store::Result<TrendsView>>;

    void start(const TrendsAsk& ask);
    void take();

    std::shared_ptr<TrendsSource> m_source;
    QFutureWatcher<Reading> m_watcher;
    std::optional<TrendsView> m_view;
    std::optional<TrendsAsk> m_next;  ///< asked meanwhile
    bool m_isReading = false;
};

}  // namespace chalk::ui::trends
