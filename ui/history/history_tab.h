#pragma once

#include "core/store/change_history.h"
#include "ui/history/history_words.h"

#include <QAbstractTableModel>
#include <QWidget>

#include <optional>

class QComboBox;
class QLabel;
class QTableView;

namespace chalk::ui::common {
class ActionButton;
class Dialogs;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::history {

/// Who changed what and when, a row each.
class HistoryModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { When, Who, What, Detail, kColumns };

    /// The catalogue outlives the model.
    explicit HistoryModel(const lifts::Catalogue& catalogue, QObject* parent = nullptr);

    void setEntries(std::vector<store::ChangeEntry> entries);
    [[nodiscard]] const std::vector<store::ChangeEntry>& entries() const { return m_entries; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    const lifts::Catalogue& m_catalogue;
    std::vector<store::ChangeEntry> m_entries;
};

/// The history of one client, by what it is about and by who did it; as CSV too.
class HistoryTab : public QWidget {
    Q_OBJECT

public:
    /// Everything outlives the tab.
    HistoryTab(const common::Look& look, store::Database& database, const lifts::Catalogue& catalogue, common::Dialogs& dialogs, QWidget* parent = nullptr);
    /// From here on nobody hears the tab's parts.
    ~HistoryTab() override;

    /// Whose history it is; read at once where the tab is on show, else when it is shown.
    void setClient(base::ClientId client, const QString& name);
    [[nodiscard]] HistoryModel* model() const { return m_model; }
    void save();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void build();
    void read();
    void fillPeople();
    void filter();

    const common::Look& m_look;
    store::Database& m_database;
    const lifts::Catalogue& m_catalogue;
    common::Dialogs& m_dialogs;
    base::ClientId m_client;
    QString m_name;
    std::vector<store::ChangeEntry> m_all;
    HistoryModel* m_model;
    QComboBox* m_topic;
    QComboBox* m_person;
    QTableView* m_table;
    QLabel* m_note;
    common::ActionButton* m_save;
};

}  // namespace chalk::ui::history
