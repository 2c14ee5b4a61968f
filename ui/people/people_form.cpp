#include "ui/people/people_form.h"

#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/people/import_words.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::people {

namespace {

using store::PersonChoice;

constexpr std::size_t kMostAsked = 200;   ///< rows of choices in a panel; what is more stays left out
constexpr std::size_t kMostFaults = 1000;
constexpr int kNameWidth = 250;  ///< so that a name with a birth date stands in one line

QLabel* plainLabel(const QString& text, const char* role, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setProperty("role", QString::fromLatin1(role));
    label->setWordWrap(true);
    return label;
}

QGridLayout* gridIn(common::Panel& panel)
{
    auto* grid = new QGridLayout;
    grid->setContentsMargins(18, 12, 18, 14);
    grid->setHorizontalSpacing(14);
    grid->setVerticalSpacing(6);
    grid->setColumnStretch(2, 1);
    grid->setColumnMinimumWidth(0, kNameWidth);
    panel.body()->addLayout(grid);
    return grid;
}

QString bornText(const std::optional<base::Date>& born)
{
    return born ? PeopleForm::tr(", born %1").arg(birthDayText(*born)) : QString();
}

}  // namespace

PeopleForm::PeopleForm(const common::Look& look, ImportDesk& desk, QWidget* parent) : QWidget(parent), m_look(look), m_desk(desk), m_column(new QVBoxLayout(this))
{
    m_column->setContentsMargins(0, 0, 0, 0);
}

void PeopleForm::refresh()
{
    if (!m_desk.proposal()) {
        m_shown = nullptr;
        return;
    }
    if (m_shown != &m_desk.content()) {
        build();
    }
    QStringList lines{tr("To be taken in: %1.").arg(importedText(m_desk.preview()))};
    for (const ImportFile& file : m_desk.files()) {
        if (const QString left = leftOutText(file.file, file.layout); !left.isEmpty()) {
            lines.append(m_desk.files().size() > 1 ? QStringLiteral("%1: %2").arg(file.name, left) : left);
        }
    }
    m_summary->setText(lines.join(QLatin1Char('\n')));
}

void PeopleForm::build()
{
    m_shown = &m_desk.content();
    if (m_parts != nullptr) {
        m_parts->hide();
        m_parts->deleteLater();
    }
    m_parts = new QWidget(this);
    auto* column = new QVBoxLayout(m_parts);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    m_column->addWidget(m_parts);
    common::Panel* summary = addPanel(tr("What goes in"), tr("as one act; Ctrl Z takes all of it back"));
    m_summary = plainLabel({}, "strong", summary);
    m_summary->setContentsMargins(18, 12, 18, 6);
    summary->body()->addWidget(m_summary);
    QLabel* granted = plainLabel(assumptionsText(), "secondary", summary);
    granted->setContentsMargins(18, 0, 18, 14);
    summary->body()->addWidget(granted);
    addPersons();
    addExercises();
    addFaults();
    column->addStretch(1);
    m_parts->show();
}

common::Panel* PeopleForm::addPanel(const QString& title, const QString& note)
{
    auto* panel = new common::Panel(m_look, m_parts);
    panel->setTitle(title, note);
    m_parts->layout()->addWidget(panel);
    return panel;
}

void PeopleForm::addPersons()
{
    const store::PeopleProposal& proposal = *m_desk.proposal();
    if (proposal.matches.empty()) {
        return;
    }
    common::Panel* panel = addPanel(tr("Who may be a client already"), tr("decided by hand, one by one"));
    QGridLayout* grid = gridIn(*panel);
    const std::size_t count = std::min(proposal.matches.size(), kMostAsked);
    for (std::size_t i = 0; i < count; ++i) {
        const tables::PersonMatch match = proposal.matches[i];
        const tables::ListedPerson& listed = m_desk.content().persons[match.first];
        const tables::KnownPerson& known = proposal.known[match.second];
        const QString name = common::qstring(listed.name);
        auto* box = new QComboBox(panel);
        box->setAccessibleName(tr("Who %1 is").arg(name));
        box->addItems({tr("Another person"), tr("The same: add to %1").arg(common::qstring(known.name)), tr("Left out")});
        box->setCurrentIndex(static_cast<int>(proposal.people.persons[match.first].choice));
        connect(box, &QComboBox::activated, this, [this, match, id = known.id](int chosen) {
            const auto choice = static_cast<PersonChoice>(chosen);
            m_desk.decidePerson(match.first, {choice, choice == PersonChoice::AddTo ? id : base::ClientId()});
        });
        const int row = static_cast<int>(i);
        grid->addWidget(plainLabel(name + bornText(listed.birthDate), "strong", panel), row, 0);
        grid->addWidget(box, row, 1);
        grid->addWidget(plainLabel(tr("%1 as %2%3").arg(groundText(match.ground), common::qstring(known.name), bornText(known.birthDate)), "secondary", panel), row, 2);
    }
}

void PeopleForm::addExercises()
{
    const store::PeopleProposal& proposal = *m_desk.proposal();
    const auto all = m_desk.catalogue().exercises();
    common::Panel* panel = nullptr;
    QGridLayout* grid = nullptr;
    std::size_t rows = 0;
    for (std::size_t i = 0; i < proposal.exercises.size() && rows < kMostAsked; ++i) {
        if (proposal.exercises[i].isCertain) {
            continue;
        }
        if (panel == nullptr) {
            panel = addPanel(tr("Exercises that the catalogue does not know"), tr("left out unless you choose one"));
            grid = gridIn(*panel);
        }
        const QString name = common::qstring(m_desk.content().exercises[i]);
        auto* box = new QComboBox(panel);
        box->setAccessibleName(tr("What %1 is").arg(name));
        box->addItem(tr("Left out"));
        for (const lifts::Exercise& exercise : all) {
            box->addItem(common::qstring(exercise.name));
        }
        connect(box, &QComboBox::activated, this,
                [this, i, all](int chosen) { m_desk.decideExercise(i, chosen == 0 ? nullptr : &all[static_cast<std::size_t>(chosen) - 1]); });
        const lifts::Exercise* likely = proposal.exercises[i].exercise;
        const int row = static_cast<int>(rows++);
        grid->addWidget(plainLabel(name, "strong", panel), row, 0);
        grid->addWidget(box, row, 1);
        grid->addWidget(plainLabel(likely == nullptr ? QString() : tr("perhaps %1").arg(common::qstring(likely->name)), "secondary", panel), row, 2);
    }
}

void PeopleForm::addFaults()
{
    const auto& faults = m_desk.content().faults;
    if (faults.empty()) {
        return;
    }
    common::Panel* panel = addPanel(tr("Rows with faults"), tr("left out; the rest can still go in"));
    QStringList lines;
    for (std::size_t i = 0; i < std::min(faults.size(), kMostFaults); ++i) {
        lines.append(faultText(faults[i], m_desk.fileNames()));
    }
    if (faults.size() > kMostFaults) {
        lines.append(tr("and %1 more").arg(faults.size() - kMostFaults));
    }
    auto* list = new QPlainTextEdit(lines.join(QLatin1Char('\n')), panel);
    list->setReadOnly(true);
    list->setTabChangesFocus(true);
    list->setAccessibleName(tr("Rows with faults"));
    list->setMinimumHeight(qRound(m_look.theme().scaled(120)));
    auto* frame = new QVBoxLayout;
    frame->setContentsMargins(18, 12, 18, 14);
    frame->addWidget(list);
    panel->body()->addLayout(frame);
}

}  // namespace chalk::ui::people
