#include "ui/people/import_page.h"

#include "ui/common/act_history.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/dialogs.h"
#include "ui/common/empty_state.h"
#include "ui/common/look.h"
#include "ui/common/page_header.h"
#include "ui/common/scroll_column.h"
#include "ui/common/sentence_text.h"
#include "ui/people/columns_form.h"
#include "ui/people/import_words.h"
#include "ui/people/people_form.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <utility>

namespace chalk::ui::people {

namespace {

constexpr int kEdge = 24;
constexpr int kWholeProgress = 1000;

QScrollArea* scrolled(QWidget* contents, QWidget* parent)
{
    auto* area = new QScrollArea(parent);
    common::holdColumn(*area, contents);
    contents->setProperty("ground", QStringLiteral("win"));
    return area;
}

}  // namespace

ImportPage::ImportPage(ImportPageLook look, ImportServices services, QWidget* parent)
    : Page(parent),
      m_look(look),
      m_desk(std::move(services)),
      m_header(new common::PageHeader(look.look, this)),
      m_banner(new common::Banner(look.look, this)),
      m_steps(new QStackedWidget(this)),
      m_empty(new common::EmptyState(look.look)),
      m_columns(new ColumnsForm(look.look, m_desk)),
      m_people(new PeopleForm(look.look, m_desk)),
      m_note(new QLabel(this)),
      m_progress(new QProgressBar(this)),
      m_add(new common::ActionButton(look.look, tr("Add a file…"), this)),
      m_back(new common::ActionButton(look.look, tr("Back"), this)),
      m_next(new common::ActionButton(look.look, tr("Read"), this))
{
    m_header->setTitle(tr("Import a list"));
    m_header->setSubtitle(tr("clients and past sessions as CSV, contacts as vCard"));
    m_header->addTool(m_add);
    m_banner->hide();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_header);
    column->addWidget(m_banner);
    buildSteps();
    buildFoot();
    connect(m_add, &QAbstractButton::clicked, this, &ImportPage::chooseFile);
    connect(m_back, &QAbstractButton::clicked, this, &ImportPage::closeOrClear);
    connect(m_next, &QAbstractButton::clicked, this, &ImportPage::goOn);
    connect(&look.acts, &common::ActHistory::studioChanged, m_banner, &QWidget::hide);
    connect(&m_desk, &ImportDesk::changed, this, &ImportPage::showStep);
    connect(&m_desk, &ImportDesk::progressed, m_progress, &QProgressBar::setValue);
    connect(&m_desk, &ImportDesk::failed, this, &ImportPage::tellTrouble);
    connect(&m_desk, &ImportDesk::imported, this, &ImportPage::tellImported);
    auto* add = new QAction(tr("Add a file to import"), this);
    add->setShortcut(Qt::CTRL | Qt::Key_O);
    add->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(add, &QAction::triggered, this, &ImportPage::chooseFile);
    addAction(add);
    m_add->setKeyText(tr("Ctrl O"));
    showStep();
}

void ImportPage::buildSteps()
{
    m_empty->setPicture(QStringLiteral("roster"));
    m_empty->setWords(tr("No list yet"), tr("A list of clients, of what they did, or their contact cards. Nothing is written before you have seen how it is read and who is meant."));
    common::ActionButton* choose = m_empty->addButton(tr("Choose a file…"));
    choose->setKind(common::ButtonKind::Primary);
    connect(choose, &QAbstractButton::clicked, this, &ImportPage::chooseFile);
    m_steps->addWidget(m_empty);
    m_steps->addWidget(scrolled(m_columns, m_steps));
    m_steps->addWidget(scrolled(m_people, m_steps));
    auto* frame = new QHBoxLayout;
    frame->setContentsMargins(kEdge, 8, kEdge, 0);
    frame->addWidget(m_steps);
    static_cast<QVBoxLayout*>(layout())->addLayout(frame, 1);
}

void ImportPage::buildFoot()
{
    m_note->setProperty("role", QStringLiteral("secondary"));
    m_note->setTextFormat(Qt::PlainText);
    m_note->setWordWrap(true);
    m_progress->setRange(0, kWholeProgress);
    m_progress->setAccessibleName(tr("How far it is"));
    m_progress->setTextVisible(false);
    m_progress->setMaximumWidth(qRound(m_look.look.theme().scaled(220)));
    m_back->setKeyText(tr("Esc"));
    m_next->setKind(common::ButtonKind::Primary);
    auto* foot = new QHBoxLayout;
    foot->setContentsMargins(kEdge, 10, kEdge, 14);
    foot->setSpacing(10);
    foot->addWidget(m_note, 1);
    foot->addWidget(m_progress);
    foot->addWidget(m_back);
    foot->addWidget(m_next);
    static_cast<QVBoxLayout*>(layout())->addLayout(foot);
}

QString ImportPage::title() const
{
    return tr("Import");
}

void ImportPage::open(const shell::Place&)
{
    refresh();
    (m_next->isVisibleTo(this) ? static_cast<QWidget*>(m_next) : m_add)->setFocus(Qt::OtherFocusReason);
}

void ImportPage::refresh()
{
    showStep();
}

std::vector<shell::KeyHint> ImportPage::keyHints() const
{
    std::vector<shell::KeyHint> hints;
    if (m_add->isEnabled()) {
        hints.push_back({tr("Ctrl+O"), tr("Add a file")});
    }
    hints.push_back({tr("Esc"), m_desk.isBusy() ? tr("Stop") : tr("Back")});
    return hints;
}

bool ImportPage::closeOrClear()
{
    if (m_desk.isBusy()) {
        m_desk.stop();
        return true;
    }
    if (m_desk.step() == ImportDesk::Step::Files) {
        return false;
    }
    m_desk.back();
    return true;
}

void ImportPage::chooseFile()
{
    if (m_desk.isBusy() || m_desk.step() == ImportDesk::Step::People) {
        return;
    }
    const auto file = m_look.dialogs.fileToOpen(this, {tr("A list to import"), {}, {}, tr("Lists and contact cards (*.csv *.txt *.tsv *.vcf);;All files (*)"), {}});
    if (file) {
        m_banner->hide();
        m_desk.addFile(*file);
    }
}

void ImportPage::goOn()
{
    m_banner->hide();
    if (m_desk.isBusy()) {
        m_desk.stop();
    } else if (m_desk.step() == ImportDesk::Step::Columns) {
        m_desk.read();
    } else if (m_desk.step() == ImportDesk::Step::People) {
        m_desk.takeIn();
    }
}

QString ImportPage::footText() const
{
    if (m_desk.isBusy()) {
        return m_desk.step() == ImportDesk::Step::People ? tr("Taking in: nothing is there before all of it is.") : tr("Reading…");
    }
    const auto problem = m_desk.problem();
    if (m_desk.step() == ImportDesk::Step::Columns && problem) {
        return m_desk.files()[problem->first].name + QStringLiteral(": ") + problemText(problem->second);
    }
    if (m_desk.step() == ImportDesk::Step::People && !m_desk.content().faults.empty()) {
        return tr("Faults: %1. Those rows are left out.").arg(m_desk.content().faults.size());
    }
    return {};
}

void ImportPage::showStep()
{
    const bool isBusy = m_desk.isBusy();
    const bool isInFiles = m_desk.step() == ImportDesk::Step::Files;
    m_columns->refresh();
    m_people->refresh();
    m_columns->setEnabled(!isBusy);
    m_people->setEnabled(!isBusy);
    m_steps->setCurrentIndex(static_cast<int>(m_desk.step()));
    m_note->setText(footText());
    m_progress->setVisible(isBusy);
    m_progress->setValue(isBusy ? m_progress->value() : 0);
    m_add->setEnabled(!isBusy && m_desk.step() != ImportDesk::Step::People);
    m_back->setVisible(!isInFiles && !isBusy);
    m_next->setVisible(!isInFiles || isBusy);
    m_next->setEnabled(isBusy || m_desk.step() == ImportDesk::Step::People || !m_desk.problem());
    m_next->setText(isBusy ? tr("Stop") : m_desk.step() == ImportDesk::Step::Columns ? tr("Read") : m_desk.content().faults.empty() ? tr("Import") : tr("Import the rest"));
    if (std::exchange(m_shownStep, m_desk.step()) != m_desk.step() && isVisible()) {
        (isInFiles ? m_add : m_next)->setFocus(Qt::OtherFocusReason);
    }
    Q_EMIT pageChanged();
}

void ImportPage::say(const QString& lead, const QString& text, bool isTrouble)
{
    m_banner->setMessage({isTrouble ? common::Signal::Warn : common::Signal::Info, isTrouble ? QStringLiteral("warning") : QStringLiteral("check"), lead, text});
    m_banner->show();
}

void ImportPage::tellImported(const store::PeopleImported& imported)
{
    m_look.acts.add(imported.act, tr("Imported: %1").arg(importedBriefly(imported)));
    say(tr("Taken in."), tr("%1. Ctrl Z takes all of it back.").arg(importedText(imported)), false);
    Q_EMIT studioChanged();
}

void ImportPage::tellTrouble(const QString& reason)
{
    say(tr("That did not go."), common::sentenceText(reason), true);
}

}  // namespace chalk::ui::people
