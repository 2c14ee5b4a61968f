#pragma once

#include "ui/trends/trend_sheets.h"

#include <QScrollArea>

class QLabel;
class QTableView;
class QVBoxLayout;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::trends {

/// The numbers of all charts as tables, one under the other, with notes at the foot. They can be copied.
class TrendTables : public QScrollArea {
    Q_OBJECT

public:
    /// `look` outlives the tables.
    explicit TrendTables(const common::Look& look, QWidget* parent = nullptr);

    void setSheets(const std::vector<TrendSheet>& sheets, const QStringList& notes);
    [[nodiscard]] const std::vector<QTableView*>& tables() const { return m_tables; }
    /// What Copy puts on the clipboard: the selected cells of the table with the focus; all sheets where nothing is selected.
    [[nodiscard]] QString copyText() const;
    void focusFirst();

private:
    void addSheet(const TrendSheet& sheet);
    void addLabel(const QString& text, bool isHead);
    void dress();

    const common::Look& m_look;
    QVBoxLayout* m_column;
    std::vector<TrendSheet> m_sheets;
    std::vector<QTableView*> m_tables;
    std::vector<QLabel*> m_labels;
};

}  // namespace chalk::ui::trends
