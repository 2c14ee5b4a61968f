#pragma once

#include "core/checkin/check_in.h"
#include "ui/common/theme.h"

#include <QAbstractListModel>

#include <vector>

namespace chalk::ui::check_in {

/// One client of the queue, ready to be drawn.
struct QueueRow {
    base::ClientId client;
    QString name;
    QString finding;  ///< in a word
    QString why;
    QString icon;
    common::Signal signal = common::Signal::Muted;
    bool isDecided = false;
    bool isSkipped = false;

    bool operator==(const QueueRow&) const = default;
};

/// The icon and the signal of a finding; that of a decided client is a tick.
[[nodiscard]] QString iconOf(checkin::FindingKind kind);
[[nodiscard]] common::Signal signalOf(checkin::FindingKind kind);

/// The clients of a check-in in the order of the queue.
class QueueModel : public QAbstractListModel {
    Q_OBJECT

public:
    using QAbstractListModel::QAbstractListModel;

    /// Keeps what is selected where only the rows' words change.
    void setRows(std::vector<QueueRow> rows);
    [[nodiscard]] const std::vector<QueueRow>& rows() const { return m_rows; }
    /// -1 where the client is not in the queue.
    [[nodiscard]] int rowOf(base::ClientId client) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

private:
    std::vector<QueueRow> m_rows;
};

}  // namespace chalk::ui::check_in
