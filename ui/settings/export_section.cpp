#include "ui/settings/export_section.h"

#include "core/store/database.h"
#include "ui/common/action_button.h"
#include "ui/common/clock.h"
#include "ui/common/dialogs.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/common/sentence_text.h"

#include <QCheckBox>
#include <QDesktopServices>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPromise>
#include <QThreadPool>
#include <QUrl>
#include <QVBoxLayout>

namespace chalk::ui::settings {

namespace {

/// What one export needs, to be handed to its thread.
struct ExportJob {
    store::Access studio;
    base::CoachId author;
    QString folder;
    store::OpenFilesWish wish;
    base::Date today;
};

store::Result<int> exported(const ExportJob& job, const store::Progress& progress)
{
    const auto database = store::Database::open(job.studio, store::OpenMode::MustExist);
    if (!database) {
        return tl::make_unexpected(database.error());
    }
    (*database)->setAuthor(job.author);
    return store::writeOpenFiles(**database, job.folder, job.wish, job.today, progress);
}

QLabel* exportProse(const QString& text, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setProperty("role", QStringLiteral("secondary"));
    return label;
}

}  // namespace

ExportSection::ExportSection(ExportServices services, QWidget* parent)
    : SettingsSection(parent),
      m_services(std::move(services)),
      m_json(new QCheckBox(tr("JSON: a file for each client, for other programs"), this)),
      m_csv(new QCheckBox(tr("CSV: a table for each kind of thing, for a spreadsheet"), this)),
      m_export(new common::ActionButton(m_services.look, tr("Export everything…"), this)),
      m_stop(new common::ActionButton(m_services.look, tr("Stop"), this)),
      m_open(new common::ActionButton(m_services.look, tr("Open the folder"), this)),
      m_progress(new QProgressBar(this)),
      m_note(exportProse({}, this))
{
    build();
    connect(m_export, &QPushButton::clicked, this, &ExportSection::begin);
    connect(m_stop, &QPushButton::clicked, this, &ExportSection::closeOrClear);
    connect(m_open, &QPushButton::clicked, this, [this] { QDesktopServices::openUrl(QUrl::fromLocalFile(m_folder)); });
    connect(m_json, &QCheckBox::toggled, this, &ExportSection::showState);
    connect(m_csv, &QCheckBox::toggled, this, &ExportSection::showState);
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &ExportSection::take);
    connect(&m_watcher, &QFutureWatcherBase::progressRangeChanged, m_progress, &QProgressBar::setRange);
    connect(&m_watcher, &QFutureWatcherBase::progressValueChanged, m_progress, &QProgressBar::setValue);
    showState();
}

ExportSection::~ExportSection()
{
    m_watcher.disconnect();
    if (m_isStopped) {
        *m_isStopped = true;
    }
    m_watcher.waitForFinished();
}

void ExportSection::build()
{
    auto* panel = new common::Panel(m_services.look, this);
    panel->setTitle(tr("Export"), tr("everything, as open files"));
    addForms(*panel);
    addFoot(*panel);
    column()->addWidget(panel);
}

void ExportSection::addForms(common::Panel& panel)
{
    m_json->setChecked(true);
    m_csv->setChecked(true);
    auto* words = new QVBoxLayout;
    words->setContentsMargins(18, 12, 18, 8);
    words->setSpacing(8);
    words->addWidget(exportProse(tr("People, sessions, lifts with their whole log, forms, letters, decisions, plans and the studio’s own settings. Files beside them say what "
                                    "every field and column means. The same files make a new studio again: chalkrung open-files."),
                                 &panel));
    words->addWidget(m_json);
    words->addWidget(m_csv);
    words->addWidget(exportProse(tr("Health data is in plain text in these files. They are readable by you only; take care where you leave them."), &panel));
    panel.body()->addLayout(words);
}

void ExportSection::addFoot(common::Panel& panel)
{
    m_progress->setAccessibleName(tr("How far the export is"));
    m_progress->setTextVisible(false);
    m_note->setAccessibleName(tr("What became of the export"));
    m_stop->setKeyText(tr("Esc"));
    auto* buttons = new QHBoxLayout;
    buttons->setContentsMargins(18, 4, 18, 8);
    buttons->setSpacing(8);
    buttons->addWidget(m_export);
    buttons->addWidget(m_stop);
    buttons->addWidget(m_open);
    buttons->addWidget(m_progress, 1);
    buttons->addStretch(1);
    panel.body()->addLayout(buttons);
    auto* said = new QVBoxLayout;
    said->setContentsMargins(18, 0, 18, 14);
    said->addWidget(m_note);
    panel.body()->addLayout(said);
}

void ExportSection::showState()
{
    m_export->setEnabled(!m_isRunning && (m_json->isChecked() || m_csv->isChecked()));
    m_json->setEnabled(!m_isRunning);
    m_csv->setEnabled(!m_isRunning);
    m_stop->setVisible(m_isRunning);
    m_progress->setVisible(m_isRunning);
    m_open->setVisible(!m_isRunning && !m_folder.isEmpty());
    m_note->setVisible(!m_note->text().isEmpty());
}

void ExportSection::refresh()
{
    showState();
}

bool ExportSection::closeOrClear()
{
    if (m_isRunning) {
        *m_isStopped = true;
    }
    return m_isRunning;
}

void ExportSection::begin()
{
    const auto chosen = m_services.dialogs.folder(window(), {tr("Where the files go"), {}, {}, {}, {}});
    if (chosen) {
        run(*chosen + QStringLiteral("/studio-") + QString::fromStdString(m_services.clock.today().toString()));
    }
}

void ExportSection::run(const QString& folder)
{
    m_folder = folder;
    m_note->clear();
    m_isRunning = true;
    m_isStopped = std::make_shared<std::atomic_bool>(false);
    m_progress->setRange(0, 0);
    auto promise = std::make_shared<QPromise<Outcome>>();
    m_watcher.setFuture(promise->future());
    const ExportJob job{m_services.studio, m_services.author(), folder, {m_json->isChecked(), m_csv->isChecked(), {}}, m_services.clock.today()};
    QThreadPool::globalInstance()->start([promise, job, isStopped = m_isStopped] {
        promise->start();
        promise->addResult(std::make_shared<store::Result<int>>(exported(job, [&](int done, int of) {
            promise->setProgressRange(0, of);
            promise->setProgressValue(done);
            return !*isStopped;
        })));
        promise->finish();
    });
    showState();
    m_stop->setFocus(Qt::OtherFocusReason);
}

void ExportSection::take()
{
    const Outcome outcome = m_watcher.result();
    m_isRunning = false;
    if (*outcome) {
        m_note->setText(**outcome == 1 ? tr("1 client is in %1.").arg(m_folder) : tr("%1 clients are in %2.").arg(**outcome).arg(m_folder));
        Q_EMIT studioChanged();
    } else {
        m_note->setText(common::sentenceText(outcome->error().message));
        m_folder.clear();
    }
    showState();
    m_export->setFocus(Qt::OtherFocusReason);
}

}  // namespace chalk::ui::settings
