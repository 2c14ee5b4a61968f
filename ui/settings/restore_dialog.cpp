#include "ui/settings/restore_dialog.h"

#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/dialogs.h"
#include "ui/common/look.h"

#include <QDir>
#include <QFileInfo>
#include <QGridLayout>
#include <QLabel>
#include <QListWidget>
#include <QPromise>
#include <QThreadPool>
#include <QVBoxLayout>

namespace chalk::ui::settings {

namespace {

constexpr int kRestoreWidth = 860;
constexpr int kRestoreHeight = 560;
constexpr int kRestoreListWidth = 300;

}  // namespace

RestoreDialog::RestoreDialog(const common::Look& look, common::Dialogs& dialogs, store::BackupShelf shelf, const store::Access& studio, base::Date today,
                             const QString& chosen, AskKeys askKeys, QWidget* parent)
    : QDialog(parent),
      m_look(look),
      m_dialogs(dialogs),
      m_shelf(std::move(shelf)),
      m_studioKeys(studio.keys),
      m_keys(studio.keys),
      m_askKeys(std::move(askKeys)),
      m_today(today),
      m_list(new QListWidget(this)),
      m_title(new QLabel(this)),
      m_state(new QLabel(this)),
      m_lines(new QGridLayout),
      m_banner(new common::Banner(look, this)),
      m_unseal(new common::ActionButton(look, tr("Give its passphrase…"), this)),
      m_restore(new common::ActionButton(look, tr("Restore this backup"), this))
{
    if (auto present = store::contentsOf(studio.target)) {
        m_present = *std::move(present);
    }
    setWindowTitle(tr("Restore a backup"));
    resize(qRound(look.theme().scaled(kRestoreWidth)), qRound(look.theme().scaled(kRestoreHeight)));
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &RestoreDialog::take);
    build();
    fillList(chosen);
}

RestoreDialog::~RestoreDialog()
{
    m_watcher.disconnect(this);
    m_list->disconnect(this);
    if (m_isStopped) {
        *m_isStopped = true;
    }
    m_watcher.waitForFinished();
}

void RestoreDialog::build()
{
    m_list->setAccessibleName(tr("Backups, the latest first"));
    auto* other = new common::ActionButton(m_look, tr("Another file…"), this);
    other->setAutoDefault(false);
    connect(other, &QPushButton::clicked, this, &RestoreDialog::chooseOther);
    auto* left = new QVBoxLayout;
    left->setSpacing(10);
    left->addWidget(m_list, 1);
    left->addWidget(other);
    m_list->setFixedWidth(qRound(m_look.theme().scaled(kRestoreListWidth)));
    auto* row = new QHBoxLayout;
    row->setSpacing(20);
    row->addLayout(left);
    row->addWidget(makePreview(), 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 20, 20, 20);
    column->setSpacing(16);
    column->addLayout(row, 1);
    column->addLayout(makeFoot());
    connect(m_list, &QListWidget::currentRowChanged, this, [this] {
        m_keys = m_studioKeys;
        look();
    });
    m_unseal->setAutoDefault(false);
    connect(m_unseal, &QPushButton::clicked, this, &RestoreDialog::unseal);
}

QWidget* RestoreDialog::makePreview()
{
    auto* preview = new QWidget(this);
    auto* column = new QVBoxLayout(preview);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    m_title->setProperty("role", QStringLiteral("section"));
    m_title->setWordWrap(true);
    m_state->setProperty("role", QStringLiteral("secondary"));
    m_state->setWordWrap(true);
    m_lines->setHorizontalSpacing(24);
    m_lines->setVerticalSpacing(8);
    m_lines->setColumnStretch(1, 1);
    m_lines->setColumnStretch(2, 1);
    column->addWidget(m_title);
    column->addWidget(m_state);
    column->addLayout(m_lines);
    column->addStretch(1);
    column->addWidget(m_banner);
    column->addWidget(m_unseal, 0, Qt::AlignLeft);
    return preview;
}

QLayout* RestoreDialog::makeFoot()
{
    auto* leave = new common::ActionButton(m_look, tr("Change nothing"), this);
    leave->setKeyText(tr("Esc"));
    leave->setDefault(true);
    m_restore->setKind(common::ButtonKind::Danger);
    m_restore->setAutoDefault(false);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_restore, &QPushButton::clicked, this, &QDialog::accept);
    auto* foot = new QHBoxLayout;
    foot->addStretch(1);
    foot->addWidget(leave);
    foot->addWidget(m_restore);
    return foot;
}

void RestoreDialog::addFile(const QString& file, const QString& text)
{
    auto* item = new QListWidgetItem(text, m_list);
    item->setData(Qt::UserRole, file);
    item->setToolTip(QDir::toNativeSeparators(file));
}

void RestoreDialog::fillList(const QString& chosen)
{
    const std::vector<store::KeptBackup> backups = m_shelf.list();
    const std::vector<QString> moments = momentTexts(backups, m_today);
    for (std::size_t i = 0; i < backups.size(); ++i) {
        const QString& file = backups[i].file;
        addFile(file, tr("%1 · %2").arg(moments[i], sizeText(QFileInfo(file).size())));
        if (file == chosen) {
            m_list->setCurrentRow(m_list->count() - 1);
        }
    }
    if (m_list->currentRow() < 0) {
        m_list->setCurrentRow(m_list->count() > 0 ? 0 : -1);
    }
    if (m_list->count() == 0) {
        look();
    }
}

void RestoreDialog::chooseOther()
{
    if (const auto file = m_dialogs.fileToOpen(this, {tr("A backup of a studio"), m_shelf.folder(), {}, tr("Studios (*.chalkrung)"), {}})) {
        addFile(*file, QFileInfo(*file).fileName());
        m_list->setCurrentRow(m_list->count() - 1);
    }
}

void RestoreDialog::unseal()
{
    if (auto keys = m_askKeys(m_file)) {
        m_keys = std::move(keys);
        look();
    }
}

void RestoreDialog::look()
{
    const QListWidgetItem* item = m_list->currentItem();
    m_file = item == nullptr ? QString() : item->data(Qt::UserRole).toString();
    m_restore->setEnabled(false);
    m_unseal->hide();
    m_banner->hide();
    showLines({});
    m_title->setText(item == nullptr ? tr("There is no backup yet.") : item->text());
    m_state->setText(item == nullptr ? tr("Choose a file that you kept elsewhere.") : tr("Being opened and verified…"));
    if (m_isStopped) {
        *m_isStopped = true;
    }
    if (item == nullptr) {
        return;
    }
    m_isLooking = true;
    m_isStopped = std::make_shared<std::atomic_bool>(false);
    auto promise = std::make_shared<QPromise<Contents>>();
    m_watcher.setFuture(promise->future());
    QThreadPool::globalInstance()->start([promise, file = m_file, keys = m_keys, isStopped = m_isStopped] {
        promise->start();
        const auto goesOn = [&isStopped](int, int) { return !*isStopped; };
        promise->addResult(std::make_shared<store::Result<store::StudioContents>>(store::verifyBackup(file, goesOn, keys.get())));
        promise->finish();
    });
}

void RestoreDialog::take()
{
    const Contents contents = m_watcher.result();
    m_isLooking = false;
    m_restore->setEnabled(contents->has_value());
    m_banner->setVisible(true);
    if (!*contents) {
        m_state->clear();
        const bool isLocked = contents->error().kind == store::StoreError::Kind::Locked;
        m_unseal->setVisible(isLocked);
        if (isLocked) {
            return m_banner->setMessage({common::Signal::Warn, QStringLiteral("lock"), tr("It is sealed with another passphrase."),
                                         tr("It opens with the one that the studio had when it was made.")});
        }
        return m_banner->setMessage({common::Signal::Pain, QStringLiteral("warning"), tr("It cannot be restored."), contents->error().message});
    }
    m_state->setText(tr("Opened and verified just now."));
    showLines(contentLines(**contents, m_present));
    m_banner->setMessage({common::Signal::Warn, QStringLiteral("warning"), tr("It takes the place of what is open."),
                          tr("What was done since then is not in it, and Ctrl+Z does not bring it back. What is open now is kept as a file among the backups. The window "
                             "opens anew.")});
}

void RestoreDialog::showLines(const std::vector<ContentLine>& lines)
{
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const auto put = [this](const QString& text, const char* role, int row, int column) {
        auto* label = new QLabel(text, this);
        label->setProperty("role", QLatin1String(role));
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        m_lines->addWidget(label, row, column, Qt::AlignTop);
    };
    if (!lines.empty()) {
        put(tr("In this backup"), "caption", 0, 1);
        put(tr("Open now"), "caption", 0, 2);
    }
    int row = 1;
    for (const ContentLine& line : lines) {
        put(line.what, "secondary", row, 0);
        put(line.backup, line.differs ? "strong" : "", row, 1);
        put(line.present, line.differs ? "strong" : "", row, 2);
        ++row;
    }
}

}  // namespace chalk::ui::settings
