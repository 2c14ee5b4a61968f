#include "ui/settings/move_dialog.h"

#include "core/store/server_target.h"
#include "core/store/studio_transfer.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/dialogs.h"
#include "ui/common/look.h"

#include <QDir>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPromise>
#include <QRegularExpression>
#include <QStyle>
#include <QThreadPool>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::settings {

namespace {

constexpr int kMoveWidth = 620;
constexpr const char* kAddressForm = "postgresql://LOGIN@HOST/DATABASE";

store::Result<qint64> moved(const store::Access& from, const store::Access& to, const store::Progress& progress)
{
    const auto studio = store::Database::open(from, store::OpenMode::ReadOnly);
    return studio ? store::transferStudio(**studio, to, progress) : tl::make_unexpected(studio.error());
}

QLabel* moveLine(const char* role, QWidget* parent)
{
    auto* label = new QLabel(parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setProperty("role", QLatin1String(role));
    return label;
}

/// As it is typed at a shell.
QString shellWord(QString word)
{
    static const QRegularExpression plain(QStringLiteral("^[A-Za-z0-9_@%+=:,./-]+$"));
    return plain.match(word).hasMatch() ? word : QLatin1Char('\'') + word.replace(QLatin1Char('\''), QStringLiteral("'\\''")) + QLatin1Char('\'');
}

}  // namespace

MoveDialog::MoveDialog(MoveServices services, MoveTarget target, QWidget* parent)
    : QDialog(parent),
      m_services(std::move(services)),
      m_target(target),
      m_place(new QLineEdit(this)),
      m_placeFault(moveLine("fault", this)),
      m_password(new QLineEdit(this)),
      m_passwordFault(moveLine("fault", this)),
      m_progress(new QProgressBar(this)),
      m_note(moveLine("secondary", this)),
      m_banner(new common::Banner(m_services.look, this)),
      m_command(new QLineEdit(this)),
      m_choose(new common::ActionButton(m_services.look, tr("Choose…"), this)),
      m_leave(new common::ActionButton(m_services.look, tr("Cancel"), this)),
      m_move(new common::ActionButton(m_services.look, target == MoveTarget::Server ? tr("Move to the server") : tr("Move to the file"), this))
{
    setWindowTitle(target == MoveTarget::Server ? tr("Move the studio to a server") : tr("Move the studio to a file"));
    setMinimumWidth(qRound(m_services.look.theme().scaled(kMoveWidth)));
    build();
    connect(m_choose, &QPushButton::clicked, this, &MoveDialog::chooseFile);
    connect(m_leave, &QPushButton::clicked, this, &MoveDialog::reject);
    connect(m_move, &QPushButton::clicked, this, &MoveDialog::begin);
    connect(m_place, &QLineEdit::textEdited, this, &MoveDialog::clearFaults);
    connect(m_password, &QLineEdit::textEdited, this, &MoveDialog::clearFaults);
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &MoveDialog::take);
    connect(&m_watcher, &QFutureWatcherBase::progressRangeChanged, m_progress, &QProgressBar::setRange);
    connect(&m_watcher, &QFutureWatcherBase::progressValueChanged, this, &MoveDialog::showProgress);
    showState();
}

MoveDialog::~MoveDialog()
{
    m_watcher.disconnect();
    if (m_isStopped) {
        *m_isStopped = true;
    }
    m_watcher.waitForFinished();
}

void MoveDialog::build()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 20, 20, 20);
    column->setSpacing(14);
    auto* words = moveLine("secondary", this);
    words->setText(tr("Everything is copied with its history, read back and compared. All of it is there in the end, or nothing. The studio that is open stays as it is."));
    column->addWidget(words);
    column->addLayout(makeFields());
    m_progress->setTextVisible(false);
    m_progress->setAccessibleName(tr("How far the move is"));
    m_note->setAccessibleName(tr("What becomes of the move"));
    m_command->setReadOnly(true);
    m_command->setAccessibleName(tr("How to open it"));
    column->addWidget(m_progress);
    column->addWidget(m_note);
    column->addWidget(m_banner);
    column->addWidget(m_command);
    m_banner->setVisible(m_services.isSealed && m_target == MoveTarget::Server);
    m_banner->setMessage({common::Signal::Warn, QStringLiteral("lock"), tr("This studio is sealed by a passphrase."),
                          tr("On a server the roles decide who reads what. Take the passphrase away first: Settings, Lock.")});
    column->addStretch(1);
    addFoot();
}

QLayout* MoveDialog::makeFields()
{
    const bool isServer = m_target == MoveTarget::Server;
    auto* fields = new QGridLayout;
    fields->setHorizontalSpacing(14);
    fields->setVerticalSpacing(8);
    fields->setColumnStretch(1, 1);
    const auto add = [this, fields, isServer](int row, const QString& name, QLineEdit* field, QLabel* fault) {
        auto* label = new QLabel(name, this);
        label->setBuddy(field);
        field->setAccessibleName(name);
        fields->addWidget(label, row, 0, Qt::AlignVCenter);
        fields->addWidget(field, row, 1, 1, isServer ? 2 : 1);  // Choose… stands beside that of a file
        fields->addWidget(fault, row + 1, 1, 1, 2);
        fault->hide();
    };
    add(0, isServer ? tr("Server") : tr("File"), m_place, m_placeFault);
    m_place->setPlaceholderText(isServer ? QLatin1String(kAddressForm) : tr("A file that is not there yet"));
    fields->addWidget(m_choose, 0, 2);
    m_choose->setAutoDefault(false);
    m_choose->setVisible(!isServer);
    m_password->setEchoMode(QLineEdit::Password);
    m_password->setPlaceholderText(tr("Where the server asks for one"));
    if (isServer) {
        add(2, tr("Password"), m_password, m_passwordFault);
    } else {
        m_password->hide();
        m_passwordFault->hide();
    }
    return fields;
}

void MoveDialog::addFoot()
{
    m_leave->setKeyText(tr("Esc"));
    m_leave->setAutoDefault(false);
    m_move->setKind(common::ButtonKind::Primary);
    m_move->setDefault(true);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(8);
    foot->addStretch(1);
    foot->addWidget(m_leave);
    foot->addWidget(m_move);
    qobject_cast<QVBoxLayout*>(layout())->addLayout(foot);
}

void MoveDialog::chooseFile()
{
    const auto file = m_services.dialogs.fileToSave(this, {tr("Move the studio to a file"), {}, QStringLiteral("studio.chalkrung"), tr("Studios (*.chalkrung)"), QStringLiteral("chalkrung")});
    if (file) {
        m_place->setText(QDir::toNativeSeparators(*file));
        clearFaults();
    }
}

store::Access MoveDialog::typed()
{
    const QString place = m_place->text().trimmed();
    if (m_target == MoveTarget::File) {
        return QDir::fromNativeSeparators(place);
    }
    store::Access to = store::withoutPasswordInTarget(place);
    if (to.target != place) {
        m_place->setText(to.target);
        m_password->setText(to.password);
    }
    to.password = m_password->text();
    return to;
}

QString MoveDialog::faultOf(const store::Access& to) const
{
    if (m_target == MoveTarget::File) {
        return to.target.isEmpty() ? tr("Name a file that is not there yet.") : store::isServerTarget(to.target) ? tr("This is a server’s address, not a file.") : QString();
    }
    if (!store::isServerTarget(to.target)) {
        return tr("Type the server’s address: %1.").arg(QLatin1String(kAddressForm));
    }
    const auto server = store::serverTargetOf(to.target);
    if (!server) {
        return server.error().message;
    }
    return server->database.isEmpty() ? tr("Name the database at the end of the address: %1.").arg(QLatin1String(kAddressForm)) : QString();
}

void MoveDialog::begin()
{
    if (m_isMoving || m_isMoved) {
        return;
    }
    clearFaults();
    const store::Access to = typed();
    if (const QString fault = faultOf(to); !fault.isEmpty()) {
        sayFault(*m_place, *m_placeFault, fault);
        return;
    }
    run(to);
}

void MoveDialog::run(const store::Access& to)
{
    m_goal = to.target;
    m_isMoving = true;
    m_isStopped = std::make_shared<std::atomic_bool>(false);
    m_progress->setRange(0, 0);
    m_note->setText(tr("Looking at the new place…"));
    auto promise = std::make_shared<QPromise<Outcome>>();
    m_watcher.setFuture(promise->future());
    QThreadPool::globalInstance()->start([promise, from = m_services.studio, to, isStopped = m_isStopped] {
        promise->start();
        promise->addResult(std::make_shared<store::Result<qint64>>(moved(from, to, [&](int done, int of) {
            promise->setProgressRange(0, of);
            promise->setProgressValue(done);
            return !*isStopped;
        })));
        promise->finish();
    });
    showState();
    m_leave->setFocus(Qt::OtherFocusReason);
}

void MoveDialog::showProgress(int done)
{
    m_progress->setValue(done);
    if (*m_isStopped) {
        m_note->setText(tr("Being stopped…"));
    } else {
        m_note->setText(done < m_progress->maximum() ? tr("Copying, and comparing what was written…") : tr("Verifying the copy…"));
    }
}

void MoveDialog::take()
{
    const Outcome outcome = m_watcher.result();
    m_isMoving = false;
    if (*outcome) {
        showMoved(**outcome);
        return;
    }
    const store::StoreError& error = outcome->error();
    m_note->setText(error.kind == store::StoreError::Kind::Cancelled ? tr("Stopped: nothing was moved.") : tr("Nothing was moved. The studio is as it was."));
    showState();
    if (error.kind == store::StoreError::Kind::Cancelled) {
        m_place->setFocus(Qt::OtherFocusReason);
    } else if (store::isAboutPassword(error)) {
        sayFault(*m_password, *m_passwordFault, m_password->text().isEmpty() ? tr("The server asks for the password of this login.") : tr("The server does not take this login with this password."));
    } else {
        sayFault(*m_place, *m_placeFault, error.message);
    }
}

void MoveDialog::showMoved(qint64 rows)
{
    m_isMoved = true;
    m_password->clear();
    m_note->clear();
    const QString counted = tr("%1 rows were copied, compared and verified.").arg(locale().toString(rows));
    const QString logins = m_target == MoveTarget::Server ? tr(" Give the coaches their logins by chalkrung server --add-coach.") : QString();
    m_banner->setMessage({common::Signal::Ok, QStringLiteral("check"), tr("The studio is moved."),
                          counted + tr(" Open it there by the command below. The one that is open stays as it was: from now on work in one of the two only.") + logins});
    m_banner->show();
    m_command->setText(QStringLiteral("chalkrung --studio ") + shellWord(m_goal));
    m_command->setCursorPosition(0);
    showState();
    makeRoom();
    m_leave->setFocus(Qt::OtherFocusReason);
}

void MoveDialog::sayFault(QLineEdit& field, QLabel& line, const QString& fault)
{
    line.setText(fault);
    line.show();
    field.setProperty("invalid", true);
    field.style()->polish(&field);
    field.setAccessibleDescription(fault);
    field.setFocus(Qt::OtherFocusReason);
    field.selectAll();
    makeRoom();
}

void MoveDialog::makeRoom()
{
    layout()->activate();
    resize(width(), std::max(height(), layout()->totalHeightForWidth(width())));
}

void MoveDialog::clearFaults()
{
    for (const auto& [field, line] : {std::pair(m_place, m_placeFault), std::pair(m_password, m_passwordFault)}) {
        line->hide();
        line->clear();
        field->setProperty("invalid", false);
        field->style()->polish(field);
        field->setAccessibleDescription(QString());
    }
    m_note->clear();
    m_note->hide();
}

void MoveDialog::showState()
{
    const bool isOpen = !m_isMoving && !m_isMoved;
    m_place->setEnabled(isOpen);
    m_choose->setEnabled(isOpen);
    m_password->setEnabled(isOpen);
    m_progress->setVisible(m_isMoving);
    m_note->setVisible(!m_note->text().isEmpty());
    m_command->setVisible(m_isMoved);
    m_move->setVisible(!m_isMoved);
    m_move->setEnabled(isOpen && !(m_services.isSealed && m_target == MoveTarget::Server));
    m_leave->setText(m_isMoving ? tr("Stop") : m_isMoved ? tr("Close") : tr("Cancel"));
}

void MoveDialog::reject()
{
    if (!m_isMoving) {
        QDialog::reject();
        return;
    }
    *m_isStopped = true;
    m_note->setText(tr("Being stopped…"));
}

}  // namespace chalk::ui::settings
