#include "ui/history/history_tab.h"

#include "ui/common/action_button.h"
#include "ui/common/dialogs.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/common/sentence_text.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QSaveFile>
#include <QTableView>
#include <QVBoxLayout>

namespace chalk::ui::history {

namespace {

constexpr int kEverything = -1;
constexpr int kWhenWidth = 170;
constexpr int kWhoWidth = 140;
constexpr int kWhatWidth = 280;

}  // namespace

HistoryModel::HistoryModel(const lifts::Catalogue& catalogue, QObject* parent) : QAbstractTableModel(parent), m_catalogue(catalogue) {}

void HistoryModel::setEntries(std::vector<store::ChangeEntry> entries)
{
    beginResetModel();
    m_entries = std::move(entries);
    endResetModel();
}

int HistoryModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_entries.size());
}

int HistoryModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : kColumns;
}

QVariant HistoryModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || (role != Qt::DisplayRole && role != Qt::ToolTipRole && role != Qt::AccessibleTextRole)) {
        return {};
    }
    const store::ChangeEntry& entry = m_entries[static_cast<std::size_t>(index.row())];
    switch (static_cast<Column>(index.column())) {
    case When:
        return momentText(entry.atUtc);
    case Who:
        return historyAuthor(entry);
    case What:
        return historyTitle(entry, m_catalogue);
    case Detail:
        return historyDetail(entry, m_catalogue);
    case kColumns:
        break;
    }
    return {};
}

QVariant HistoryModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) {
        return {};
    }
    switch (static_cast<Column>(section)) {
    case When:
        return tr("When");
    case Who:
        return tr("Who");
    case What:
        return tr("What");
    case Detail:
        return tr("Particulars");
    case kColumns:
        break;
    }
    return {};
}

HistoryTab::HistoryTab(const common::Look& look, store::Database& database, const lifts::Catalogue& catalogue, common::Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_database(database),
      m_catalogue(catalogue),
      m_dialogs(dialogs),
      m_model(new HistoryModel(catalogue, this)),
      m_topic(new QComboBox(this)),
      m_person(new QComboBox(this)),
      m_table(new QTableView(this)),
      m_note(new QLabel(this)),
      m_save(new common::ActionButton(look, tr("Save as CSV"), this))
{
    build();
    connect(m_topic, &QComboBox::currentIndexChanged, this, &HistoryTab::filter);
    connect(m_person, &QComboBox::currentIndexChanged, this, &HistoryTab::filter);
    connect(m_save, &QPushButton::clicked, this, &HistoryTab::save);
}

HistoryTab::~HistoryTab()
{
    m_topic->disconnect(this);
    m_person->disconnect(this);
}

void HistoryTab::build()
{
    m_topic->setAccessibleName(tr("What it is about"));
    m_topic->addItem(tr("Everything"), kEverything);
    for (const HistoryTopic topic : kHistoryTopics) {
        m_topic->addItem(historyTopicName(topic), static_cast<int>(topic));
    }
    m_person->setAccessibleName(tr("Who did it"));
    m_note->setProperty("role", QStringLiteral("secondary"));
    m_note->setTextFormat(Qt::PlainText);
    m_save->setButtonSize(common::ButtonSize::Small);
    m_table->setModel(m_model);
    m_table->setProperty("plain", true);  // cells as wide apart as their headings
    m_table->setShowGrid(false);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_table->setAccessibleName(tr("History"));
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_table->horizontalHeader()->setSectionResizeMode(HistoryModel::Detail, QHeaderView::Stretch);
    m_table->setColumnWidth(HistoryModel::When, qRound(m_look.theme().scaled(kWhenWidth)));
    m_table->setColumnWidth(HistoryModel::Who, qRound(m_look.theme().scaled(kWhoWidth)));
    m_table->setColumnWidth(HistoryModel::What, qRound(m_look.theme().scaled(kWhatWidth)));
    auto* filters = new QHBoxLayout;
    filters->setSpacing(8);
    filters->addWidget(m_topic);
    filters->addWidget(m_person);
    filters->addWidget(m_note, 1);
    filters->addWidget(m_save);
    auto* panel = new common::Panel(m_look, this);
    panel->body()->addWidget(m_table);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(24, 12, 24, 16);
    column->setSpacing(12);
    column->addLayout(filters);
    column->addWidget(panel, 1);
    setFocusProxy(m_table);
}

void HistoryTab::setClient(base::ClientId client, const QString& name)
{
    m_client = client;
    m_name = name;
    if (isVisible()) {
        read();
    }
}

void HistoryTab::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    read();
}

void HistoryTab::read()
{
    auto history = store::ChangeHistory(m_database).of(m_client);
    m_all = history ? *std::move(history) : std::vector<store::ChangeEntry>();
    fillPeople();
    filter();
    if (!history) {
        m_note->setText(common::sentenceText(history.error().message));
    }
}

/// Those who did something here; whoever was chosen stays chosen.
void HistoryTab::fillPeople()
{
    const QSignalBlocker blocker(m_person);
    const QString before = m_person->currentText();
    m_person->clear();
    m_person->addItem(tr("Everybody"));
    QStringList names;
    for (const store::ChangeEntry& entry : m_all) {
        if (const QString name = historyAuthor(entry); !names.contains(name)) {
            names.append(name);
        }
    }
    names.sort();
    m_person->addItems(names);
    m_person->setCurrentIndex(std::max(0, m_person->findText(before)));
}

void HistoryTab::filter()
{
    const int topic = m_topic->currentData().toInt();
    const bool isEverybody = m_person->currentIndex() <= 0;
    std::vector<store::ChangeEntry> shown;
    for (const store::ChangeEntry& entry : m_all) {
        const bool isTopic = topic == kEverything || static_cast<int>(topicOf(entry)) == topic;
        if (isTopic && (isEverybody || historyAuthor(entry) == m_person->currentText())) {
            shown.push_back(entry);
        }
    }
    const QString count = m_all.empty()       ? tr("Nothing was changed here yet")
                          : shown.size() == 1 ? tr("1 change") : tr("%1 changes").arg(shown.size());
    const bool isCut = m_all.size() == static_cast<std::size_t>(store::kUsualHistory);
    m_note->setText(isCut ? tr("%1 of the latest %2").arg(count).arg(store::kUsualHistory) : count);
    m_save->setEnabled(!shown.empty());
    m_model->setEntries(std::move(shown));
}

void HistoryTab::save()
{
    const QString suggestion = tr("history-%1").arg(QString(m_name).toLower().replace(QLatin1Char(' '), QLatin1Char('-')).replace(QLatin1Char('/'), QLatin1Char('-')));
    const auto path = m_dialogs.fileToSave(window(), {tr("Save the history"), {}, suggestion + QStringLiteral(".csv"), tr("Table (*.csv)"), QStringLiteral("csv")});
    if (!path) {
        return;
    }
    const QByteArray csv = historyCsvOf(m_model->entries(), m_catalogue);
    QSaveFile file(*path);
    const bool isWritten = file.open(QIODevice::WriteOnly) && file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner) &&
                           file.write(csv) == csv.size() && file.commit();
    m_note->setText(isWritten ? tr("Saved as %1").arg(*path) : tr("%1 cannot be written: %2").arg(*path, file.errorString()));
}

}  // namespace chalk::ui::history
