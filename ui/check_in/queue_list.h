#pragma once

#include "core/base/id.h"

#include <QListView>
#include <QStyledItemDelegate>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::check_in {

class QueueModel;
struct QueueRow;

/// Draws a client of the queue: the finding's icon and word and why; a tick where it is decided.
class QueueDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    QueueDelegate(const common::Look& look, const QueueModel& model, QObject* parent = nullptr);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    const common::Look& m_look;
    const QueueModel& m_model;
};

/// The queue of a check-in. Up and Down go through it.
class QueueList : public QListView {
    Q_OBJECT

public:
    /// Both outlive the list.
    QueueList(const common::Look& look, QueueModel& model, QWidget* parent = nullptr);

    /// Marks a client as the open one without telling; nothing where it is not in the queue.
    void showClient(base::ClientId client);

Q_SIGNALS:
    /// The person chose another client.
    void clientChosen(base::ClientId client);

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    QueueModel& m_model;
    bool m_isTelling = true;
};

}  // namespace chalk::ui::check_in
