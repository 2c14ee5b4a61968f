#pragma once

#include "ui/common/theme.h"
#include "ui/floor/floor_case.h"

#include <QAbstractListModel>
#include <QStyledItemDelegate>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::floor {

/// The slots of a day, with what has become of each.
class RunModel : public QAbstractListModel {
    Q_OBJECT

public:
    using QAbstractListModel::QAbstractListModel;

    /// `isChosenOpen`: there is something to record in the chosen slot.
    void setRun(const std::vector<RunSlot>& run, int chosen, bool isChosenOpen);
    [[nodiscard]] const RunSlot& slot(int index) const { return m_run[static_cast<std::size_t>(index)]; }
    [[nodiscard]] bool isChosen(int index) const { return index == m_chosen; }
    [[nodiscard]] bool isRecording(int index) const { return isChosen(index) && m_isChosenOpen; }
    /// `Ines · recording`.
    [[nodiscard]] QString note(int index) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

private:
    std::vector<RunSlot> m_run;
    int m_chosen = -1;
    bool m_isChosenOpen = false;
};

/// Draws a slot: its time, who comes, the coach, and how far it is.
class RunDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    RunDelegate(const common::Look& look, const RunModel& model, QObject* parent = nullptr);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    [[nodiscard]] QFont nameFont(int index) const;
    [[nodiscard]] double nameWidth(double width) const;
    [[nodiscard]] bool isStacked(double width) const;

    const common::Look& m_look;
    const RunModel& m_model;
};

}  // namespace chalk::ui::floor
