#pragma once

#include "ui/shell/find_provider.h"

#include <QAbstractListModel>

#include <optional>

namespace chalk::ui::shell {

/// The results of the find box as rows: headings, which cannot be chosen, and results.
class FindModel : public QAbstractListModel {
    Q_OBJECT

public:
    using QAbstractListModel::QAbstractListModel;

    void setItems(std::vector<FindItem> items);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

    /// The result of a row; none for a heading.
    [[nodiscard]] const FindItem* itemAt(int row) const;
    /// The next row with a result from `row` on in steps of 1 or -1; -1 where there is none.
    [[nodiscard]] int resultRow(int row, int step) const;

private:
    struct Row {
        std::optional<std::size_t> item;  ///< nothing: a heading
        QString text;                     ///< of a heading
    };

    std::vector<FindItem> m_items;
    std::vector<Row> m_rows;
};

}  // namespace chalk::ui::shell
