#pragma once

#include "core/progression/event.h"
#include "core/progression/stage.h"

#include <QAbstractListModel>
#include <QStyledItemDelegate>
#include <QWidget>

#include <optional>
#include <vector>

namespace chalk::ui::common {
class Look;
struct Theme;
}  // namespace chalk::ui::common

namespace chalk::ui::floor {

/// One lift of the client who is being recorded, ready to be drawn.
struct LiftRow {
    struct Box {
        QString text;
        bool isEntered = false;  ///< planned values are grey until they are entered
        bool isLow = false;      ///< under the target

        bool operator==(const Box&) const = default;
    };
    QString name;
    QString due;
    progression::Stage stage = progression::Stage::Pattern;
    std::vector<Box> amounts;
    Box left;
    Box rest;
    Box pain;
    std::optional<progression::Steadiness> felt = {};  ///< nothing before it is entered
    QString next;           ///< what follows next time; empty where nothing is known yet
    QString why;            ///< and the reason, muted behind it
    bool isUp = false;      ///< what follows is more than before
    bool isSaved = false;
    bool isSkipped = false;
    QString skipWhy = {};

    bool operator==(const LiftRow&) const = default;
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

/// The captions above the boxes.
class LiftCaptions : public QWidget {
    Q_OBJECT

public:
    explicit LiftCaptions(const common::Look& look, QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const common::Look& m_look;
};

/// Draws a lift with its boxes.
class LiftRowDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    LiftRowDelegate(const common::Look& look, const LiftRowsModel& model, QObject* parent = nullptr);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    void paintBox(QPainter& painter, const QRectF& rect, const LiftRow::Box& box) const;
    void paintBoxes(QPainter& painter, const QRectF& row, const LiftRow& lift) const;
    void paintFelt(QPainter& painter, const QRectF& rect, const LiftRow& lift) const;
    void paintNames(QPainter& painter, const QRectF& row, const LiftRow& lift) const;
    void paintNext(QPainter& painter, const QRectF& row, const LiftRow& lift) const;

    const common::Look& m_look;
    const LiftRowsModel& m_model;
};

}  // namespace chalk::ui::floor
