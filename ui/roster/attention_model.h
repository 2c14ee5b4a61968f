#pragma once

#include "ui/roster/roster_row.h"

#include <QAbstractListModel>

namespace chalk::ui::roster {

/// What needs attention today, the most pressing first.
class AttentionModel : public QAbstractListModel {
    Q_OBJECT

public:
    /// The item ready to be painted, a `const AttentionItem*` that lives until the model changes.
    static constexpr int kItemRole = Qt::UserRole;

    using QAbstractListModel::QAbstractListModel;

    /// Resets the model.
    void setItems(std::vector<AttentionItem> items);
    [[nodiscard]] const std::vector<AttentionItem>& items() const { return m_items; }
    /// Nothing for no index.
    [[nodiscard]] static const AttentionItem* itemAt(const QModelIndex& index);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

private:
    std::vector<AttentionItem> m_items;
};

}  // namespace chalk::ui::roster

Q_DECLARE_METATYPE(const chalk::ui::roster::AttentionItem*)
