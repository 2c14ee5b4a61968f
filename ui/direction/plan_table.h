#pragma once

#include <QStringList>
#include <QTableView>

#include <vector>

class QStandardItemModel;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::direction {

/// A small table to be read: as high as its rows, up to a limit; then it scrolls. The first column is the name of the row.
class PlanTable : public QTableView {
    Q_OBJECT

public:
    /// `look` outlives the table. `mostRows` are in sight at once.
    PlanTable(const common::Look& look, const QString& name, int mostRows, QWidget* parent = nullptr);

    void setContent(const QStringList& heads, const std::vector<QStringList>& rows);
    [[nodiscard]] QString text(int row, int column) const;
    /// How many rows are in sight at once.
    void setMostRows(int rows);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();
    [[nodiscard]] int rowHeightNow() const;

    const common::Look& m_look;
    QStandardItemModel* m_model;
    int m_mostRows;
};

}  // namespace chalk::ui::direction
