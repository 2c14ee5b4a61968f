#pragma once

#include "ui/week/left_over_items.h"

#include <QAbstractListModel>
#include <QStyledItemDelegate>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::week {

/// What is in the tray. Sessions can be dragged from it.
class LeftOverModel : public QAbstractListModel {
    Q_OBJECT

public:
    using QAbstractListModel::QAbstractListModel;

    void setItems(const std::vector<LeftOverItem>& items);
    [[nodiscard]] const LeftOverItem& item(int row) const { return m_items[static_cast<std::size_t>(row)]; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    [[nodiscard]] QStringList mimeTypes() const override;
    [[nodiscard]] QMimeData* mimeData(const QModelIndexList& indexes) const override;

private:
    std::vector<LeftOverItem> m_items;
};

/// Draws an item: who, which session, the reason, and the one offer. The whole row is the target.
class LeftOverDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    LeftOverDelegate(const common::Look& look, const LeftOverModel& model, QObject* parent = nullptr);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    const common::Look& m_look;
    const LeftOverModel& m_model;
};

}  // namespace chalk::ui::week
