#pragma once

#include "core/progression/stage.h"

#include <QAbstractListModel>
#include <QStyledItemDelegate>

#include <vector>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::floor {

/// One lift of the client who is being recorded, ready to be drawn.
struct LiftRow {
    struct Box {
        QString text;
        bool isEntered = false;  ///< planned values are grey until they are entered
        bool isLow = false;      ///< under the target
    };
    QString name;
    QString due;
    progression::Stage stage = progression::Stage::Pattern;
    std::vector<Box> amounts;
    Box left;
    Box rest;
    Box felt;
    Box pain;
    QString next;           ///< what follows next time; empty where nothing is known yet
    bool isSaved = false;
    bool isSkipped = false;
};

/// The lifts of one client.
class LiftRowsModel : public QAbstractListModel {
    Q_OBJECT

public:
    using QAbstractListModel::QAbstractListModel;

    void setRows(std::vector<LiftRow> rows);
    /// Changes one row that is there.
    void setRow(int index, LiftRow row);
    [[nodiscard]] const LiftRow& row(int index) const { return m_rows[static_cast<std::size_t>(index)]; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

private:
    std::vector<LiftRow> m_rows;
};

/// Draws a lift with its boxes.
class LiftRowDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    LiftRowDelegate(const common::Look& look, const LiftRowsModel& model, QObject* parent = nullptr);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

    /// The x of the columns Left, Rest, Felt and Pain in a row of that width, and of the sets.
    struct Columns {
        double sets = 0;
        double left = 0;
        double rest = 0;
        double felt = 0;
        double pain = 0;
    };
    [[nodiscard]] Columns columnsFor(double width) const;

private:
    void paintBox(QPainter& painter, const QRectF& rect, const LiftRow::Box& box) const;
    void paintBoxes(QPainter& painter, const QRectF& row, const LiftRow& lift) const;

    const common::Look& m_look;
    const LiftRowsModel& m_model;
};

}  // namespace chalk::ui::floor
