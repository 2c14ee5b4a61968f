#pragma once

#include "ui/trends/trend_sheets.h"

#include <QAbstractTableModel>

namespace chalk::ui::trends {

/// A sheet as a table: numbers to the right.
class SheetModel : public QAbstractTableModel {
    Q_OBJECT

public:
    explicit SheetModel(TrendSheet sheet, QObject* parent = nullptr) : QAbstractTableModel(parent), m_sheet(std::move(sheet)) {}

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    TrendSheet m_sheet;
};

}  // namespace chalk::ui::trends
