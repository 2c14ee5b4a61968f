#include "ui/settings/backup_section.h"

#include "ui/common/action_button.h"
#include "ui/common/dialogs.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/settings/damaged_files.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QProgressBar>
#include <QSettings>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::settings {

namespace {

constexpr int kRowsInSight = 10;
constexpr int kBackupRowHeight = 34;  ///< pixels at a text size of 100 %

QString furtherFolderKey()
{
    return QStringLiteral("backup/further_folder");
}

QLabel* addBackupWords(QVBoxLayout& column, const char* role, QWidget* parent)
{
    auto* label = new QLabel(parent);
    label->setProperty("role", QLatin1String(role));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    column.addWidget(label);
    return label;
}

/// The words at the left of a panel, buttons at its right.
std::pair<QVBoxLayout*, QHBoxLayout*> addBackupRow(common::Panel& panel)
{
    auto* row = new QHBoxLayout;
    row->setContentsMargins(18, 8, 18, 16);
    row->setSpacing(10);
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    row->addLayout(words, 1);
    panel.body()->addLayout(row);
    return {words, row};
}

}  // namespace

QString keptFurtherFolder(const QSettings& settings)
{
    return settings.value(furtherFolderKey()).toString();
}

BackupSection::BackupSection(const BackupServices& services, QWidget* parent) : SettingsSection(parent), m_services(services)
{
    addLast();
    addFurther();
    addList();
    m_damaged = new DamagedFiles(services.look, services.dialogs, this);
    column()->addWidget(m_damaged);
    common::BackupKeeper* keeper = &services.keeper;
    connect(keeper, &common::BackupKeeper::begun, this, [this] { showMaking(true); });
    connect(keeper, &common::BackupKeeper::progressed, this, [this](int done, int of) {
        m_progress->setRange(0, of);
        m_progress->setValue(done);
    });
    connect(keeper, &common::BackupKeeper::made, this, &BackupSection::refresh);
    connect(keeper, &common::BackupKeeper::failed, this, &BackupSection::refresh);
    connect(m_damaged, &DamagedFiles::discardAsked, this, &BackupSection::discard);
    connect(&services.look, &common::Look::changed, this, &BackupSection::refresh);
    BackupSection::refresh();
}

common::ActionButton* BackupSection::makeButton(const QString& text, QWidget* parent)
{
    auto* button = new common::ActionButton(m_services.look, text, parent);
    button->setAutoDefault(false);
    return button;
}

void BackupSection::addLast()
{
    m_trouble = new common::Banner(m_services.look, this);
    column()->addWidget(m_trouble);
    auto* panel = new common::Panel(m_services.look, this);
    panel->setTitle(tr("Last backup"));
    const auto [words, buttons] = addBackupRow(*panel);
    m_last = addBackupWords(*words, "strong", panel);
    m_place = addBackupWords(*words, "secondary", panel);
    m_place->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_progress = new QProgressBar(panel);
    m_progress->setAccessibleName(tr("How far the backup is"));
    m_progress->setTextVisible(false);
    words->addWidget(m_progress);
    m_restore = makeButton(tr("Restore…"), panel);
    m_stop = makeButton(tr("Stop"), panel);
    m_stop->setKeyText(tr("Esc"));
    m_backUp = makeButton(tr("Back up now"), panel);
    m_backUp->setIconName(QStringLiteral("backup"));
    m_backUp->setKind(common::ButtonKind::Primary);
    for (common::ActionButton* button : {m_restore, m_stop, m_backUp}) {
        buttons->addWidget(button, 0, Qt::AlignTop);
    }
    column()->addWidget(panel);
    connect(m_restore, &QPushButton::clicked, this, &BackupSection::askForChosen);
    connect(m_stop, &QPushButton::clicked, this, [this] { m_services.keeper.stop(); });
    connect(m_backUp, &QPushButton::clicked, this, [this] { m_services.keeper.makeNow(); });
}

void BackupSection::addFurther()
{
    auto* panel = new common::Panel(m_services.look, this);
    panel->setTitle(tr("On another disk too"));
    const auto [words, buttons] = addBackupRow(*panel);
    m_further = addBackupWords(*words, "secondary", panel);
    m_leave = makeButton(tr("No longer"), panel);
    auto* choose = makeButton(tr("Choose a folder…"), panel);
    buttons->addWidget(m_leave, 0, Qt::AlignTop);
    buttons->addWidget(choose, 0, Qt::AlignTop);
    column()->addWidget(panel);
    m_furtherTrouble = new common::Banner(m_services.look, this);
    column()->addWidget(m_furtherTrouble);
    connect(choose, &QPushButton::clicked, this, &BackupSection::chooseFurther);
    connect(m_leave, &QPushButton::clicked, this, &BackupSection::leaveFurther);
}

void BackupSection::addList()
{
    auto* panel = new common::Panel(m_services.look, this);
    panel->setTitle(tr("Backups that are kept"));
    auto* inside = new QVBoxLayout;
    inside->setContentsMargins(18, 8, 18, 16);
    inside->setSpacing(8);
    m_rule = addBackupWords(*inside, "secondary", panel);
    m_list = new QListWidget(panel);
    m_list->setAccessibleName(tr("Backups that are kept, the latest first"));
    inside->addWidget(m_list);
    panel->body()->addLayout(inside);
    column()->addWidget(panel);
    connect(m_list, &QListWidget::itemActivated, this, &BackupSection::askForChosen);
}

void BackupSection::discard(const QString& file)
{
    if (const auto gone = m_services.keeper.shelf().discardDamaged(file); !gone) {
        m_services.dialogs.ask(this, {common::Signal::Warn, tr("The file was not deleted."), gone.error().message, {}, {}, 0});
    }
    refresh();
}

void BackupSection::askForChosen()
{
    if (!m_scene.canRestore) {
        return;
    }
    const QListWidgetItem* chosen = m_list->currentItem();
    Q_EMIT restoreAsked(chosen == nullptr ? QString() : chosen->data(Qt::UserRole).toString());
}

void BackupSection::chooseFurther()
{
    if (const auto folder = m_services.dialogs.folder(this, {tr("A folder on another disk"), keptFurtherFolder(m_services.settings), {}, {}, {}})) {
        setFurther(*folder);
    }
}

void BackupSection::leaveFurther()
{
    setFurther({});
}

void BackupSection::setFurther(const QString& folder)
{
    m_services.settings.setValue(furtherFolderKey(), folder);
    m_services.keeper.setFurtherFolder(folder);
    refresh();
}

void BackupSection::showMaking(bool isMaking)
{
    const bool hasFocus = (isMaking ? m_backUp : m_stop)->hasFocus();
    m_progress->setVisible(isMaking);
    m_stop->setVisible(isMaking);
    m_backUp->setVisible(!isMaking);
    m_restore->setVisible(m_scene.canRestore);
    m_restore->setEnabled(!isMaking);
    if (hasFocus) {
        (isMaking ? m_stop : m_backUp)->setFocus(Qt::OtherFocusReason);
    }
    if (isMaking) {
        m_progress->setValue(0);
    }
}

void BackupSection::showBanner(common::Banner& banner, const std::optional<common::BannerMessage>& message)
{
    banner.setVisible(message.has_value());
    if (message) {
        banner.setMessage(*message);
    }
}

void BackupSection::refresh()
{
    BackupScene scene = backupScene(m_services.keeper);
    const bool isListNew = scene.rows != m_scene.rows || m_list->count() == 0;
    m_scene = std::move(scene);
    showBanner(*m_trouble, m_scene.trouble);
    m_last->setText(m_scene.last);
    m_place->setText(m_scene.place);
    m_further->setText(m_scene.further);
    m_leave->setVisible(m_scene.hasFurther);
    showBanner(*m_furtherTrouble, m_scene.furtherTrouble);
    m_rule->setText(m_scene.rule);
    if (isListNew) {
        fillList();
    }
    m_damaged->show(m_scene.damaged);
    fitList();
    showMaking(m_services.keeper.isMaking());
}

void BackupSection::fillList()
{
    m_list->clear();
    for (const BackupRow& row : m_scene.rows) {
        auto* item = new QListWidgetItem(row.text, m_list);
        item->setData(Qt::UserRole, row.file);
    }
    m_list->setCurrentRow(m_scene.rows.empty() ? -1 : 0);
}

void BackupSection::fitList()
{
    const int rowHeight = qRound(m_services.look.theme().scaled(kBackupRowHeight));
    for (int i = 0; i < m_list->count(); ++i) {
        m_list->item(i)->setSizeHint({0, rowHeight});
    }
    m_list->setVisible(!m_scene.rows.empty());
    m_list->setFixedHeight(rowHeight * std::clamp(m_list->count(), 1, kRowsInSight) + 2 * m_list->frameWidth());
}

void BackupSection::showEvent(QShowEvent* event)
{
    SettingsSection::showEvent(event);
    m_services.keeper.setAtPlace(true);
}

void BackupSection::hideEvent(QHideEvent* event)
{
    SettingsSection::hideEvent(event);
    m_services.keeper.setAtPlace(false);
}

bool BackupSection::closeOrClear()
{
    const bool isMaking = m_services.keeper.isMaking();
    m_services.keeper.stop();
    return isMaking;
}

}  // namespace chalk::ui::settings
