#pragma once

#include "ui/direction/plan_editor_model.h"

#include <QAbstractTableModel>

namespace chalk::ui::direction {

/// The weeks of a plan as rows: of one lift, or of all of them, a row for each lift and week. After phase and kind, each exposure has its columns.
class PlanEditorSheet : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column : int { PhaseColumn, KindColumn, FirstWorkColumn };
    /// The columns of an exposure, in their order.
    enum WorkColumn : int { SetsColumn, RepsColumn, ShareColumn, LoadColumn, RestColumn, ReserveColumn, PauseColumn, TestColumn, WorkColumns };
    enum Role : int {
        IsOutsideRole = Qt::UserRole,  ///< bool: leaves its published range
        IsFirstRole,                   ///< bool: the first column of an exposure
        IsOverRole                     ///< bool: the week is over
    };

    /// `model` outlives the sheet.
    explicit PlanEditorSheet(PlanEditorModel& model, QObject* parent = nullptr);

    /// A lift of the plan (an index); nothing for all of them.
    void setLift(std::optional<std::size_t> lift);
    [[nodiscard]] std::optional<std::size_t> lift() const { return m_lift; }
    [[nodiscard]] std::size_t weekOf(int row) const;
    [[nodiscard]] std::size_t liftOf(int row) const;
    /// Why the text would be refused in a cell that is edited, a sentence; empty where it would not.
    [[nodiscard]] QString refusalOf(const QModelIndex& index, const QString& text) const;
    /// Makes the row's week a lighter one, or one of work.
    void toggleKind(int row);
    void copyDown(int row);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    /// Why something was not done, a sentence.
    void refused(const QString& sentence);

private:
    [[nodiscard]] WorkPlace placeOf(const QModelIndex& index) const;
    [[nodiscard]] QString textOf(const QModelIndex& index) const;
    [[nodiscard]] QString workText(const WorkPlace& place, int column) const;
    /// What there is to say of a cell; empty for nothing.
    [[nodiscard]] QString remarkOf(const QModelIndex& index) const;
    [[nodiscard]] QString spokenOf(const QModelIndex& index) const;
    [[nodiscard]] std::vector<chalk::direction::Departure> outsideOf(const QModelIndex& index) const;
    [[nodiscard]] QVariant markOf(const QModelIndex& index) const;
    void tell(const std::optional<EditFault>& fault);
    void follow();

    PlanEditorModel& m_model;
    std::optional<std::size_t> m_lift = 0;
    std::size_t m_lifts = 0;
    int m_rows = 0;
    int m_columns = 0;
};

}  // namespace chalk::ui::direction
