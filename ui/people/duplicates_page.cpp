#include "ui/people/duplicates_page.h"

#include "ui/common/act_history.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/page_header.h"
#include "ui/common/panel.h"
#include "ui/people/import_words.h"
#include "ui/people/merge_words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace chalk::ui::people {

namespace {

QString textOfPerson(const tables::KnownPerson& person)
{
    const QString name = common::qstring(person.name);
    return person.birthDate ? DuplicatesPage::tr("%1, born %2").arg(name, birthDayText(*person.birthDate)) : name;
}

}  // namespace

DuplicatesPage::DuplicatesPage(DuplicatesServices services, QWidget* parent)
    : Page(parent),
      m_services(std::move(services)),
      m_header(new common::PageHeader(m_services.look, this)),
      m_banner(new common::Banner(m_services.look, this)),
      m_list(new QListWidget(this)),
      m_kept(new QComboBox(this)),
      m_other(new QComboBox(this)),
      m_plan(new QLabel(this)),
      m_swap(new common::ActionButton(m_services.look, tr("Keep the other"), this)),
      m_merge(new common::ActionButton(m_services.look, tr("Merge"), this))
{
    m_header->setTitle(tr("Duplicates"));
    m_header->setSubtitle(tr("two records of one person become one"));
    m_banner->hide();
    build();
    connect(&m_services.acts, &common::ActHistory::studioChanged, m_banner, &QWidget::hide);
    connect(m_list, &QListWidget::currentRowChanged, this, &DuplicatesPage::choosePair);
    connect(m_kept, &QComboBox::currentIndexChanged, this, &DuplicatesPage::showPlan);
    connect(m_other, &QComboBox::currentIndexChanged, this, &DuplicatesPage::showPlan);
    connect(m_swap, &QAbstractButton::clicked, this, &DuplicatesPage::swapTwo);
    connect(m_merge, &QAbstractButton::clicked, this, &DuplicatesPage::merge);
    refresh();
}

void DuplicatesPage::build()
{
    m_list->setAccessibleName(tr("Pairs that look alike"));
    m_kept->setAccessibleName(tr("Who is kept"));
    m_other->setAccessibleName(tr("Who is merged into it"));
    m_plan->setTextFormat(Qt::PlainText);
    m_plan->setWordWrap(true);
    m_plan->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_merge->setKind(common::ButtonKind::Primary);
    auto* pairs = new common::Panel(m_services.look, this);
    pairs->setTitle(tr("Pairs that look alike"));
    pairs->body()->addWidget(m_list);
    auto* two = new common::Panel(m_services.look, this);
    two->setTitle(tr("What goes where"), tr("Ctrl Z takes it back"));
    auto* form = new QFormLayout;
    form->setContentsMargins(18, 12, 18, 8);
    form->setHorizontalSpacing(14);
    form->setVerticalSpacing(8);
    form->addRow(tr("Keep"), m_kept);
    form->addRow(tr("Merge into it"), m_other);
    two->body()->addLayout(form);
    m_plan->setContentsMargins(18, 4, 18, 8);
    two->body()->addWidget(m_plan, 1);
    auto* foot = new QHBoxLayout;
    foot->setContentsMargins(18, 0, 18, 14);
    foot->addWidget(m_swap);
    foot->addStretch(1);
    foot->addWidget(m_merge);
    two->body()->addLayout(foot);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(24, 8, 24, 16);
    row->setSpacing(16);
    row->addWidget(pairs, 2);
    row->addWidget(two, 3);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_header);
    column->addWidget(m_banner);
    column->addLayout(row, 1);
}

QString DuplicatesPage::title() const
{
    return tr("Duplicates");
}

std::vector<shell::KeyHint> DuplicatesPage::keyHints() const
{
    return {{tr("↑ ↓"), tr("Another pair")}};
}

void DuplicatesPage::open(const shell::Place& place)
{
    refresh();
    if (!place.client.isNone()) {
        const QSignalBlocker quiet(m_list);
        m_list->setCurrentRow(-1);
        m_other->setCurrentIndex(-1);
        choose(*m_kept, place.client);
        selectPair();
        showPlan();
    }
    m_list->setFocus(Qt::OtherFocusReason);
}

void DuplicatesPage::refresh()
{
    const auto [kept, other] = chosen();
    auto known = store::PeopleReader(m_services.database).known();
    m_known = known ? *std::move(known) : std::vector<tables::KnownPerson>();
    m_pairs = tables::matchesAmong(m_known);
    const QSignalBlocker quietList(m_list);
    const QSignalBlocker quietKept(m_kept);
    const QSignalBlocker quietOther(m_other);
    m_list->clear();
    m_kept->clear();
    m_other->clear();
    for (const tables::KnownPerson& person : m_known) {
        m_kept->addItem(textOfPerson(person));
        m_other->addItem(textOfPerson(person));
    }
    for (const tables::PersonMatch& pair : m_pairs) {
        m_list->addItem(tr("%1 and %2: %3").arg(common::qstring(m_known[pair.first].name), common::qstring(m_known[pair.second].name), groundText(pair.ground)));
    }
    m_kept->setCurrentIndex(-1);
    m_other->setCurrentIndex(-1);
    choose(*m_kept, kept);
    choose(*m_other, other);
    selectPair();
    showPlan();
}

void DuplicatesPage::selectPair()
{
    const auto [kept, other] = chosen();
    for (std::size_t i = 0; i < m_pairs.size(); ++i) {
        const base::ClientId first = m_known[m_pairs[i].first].id;
        const base::ClientId second = m_known[m_pairs[i].second].id;
        const bool isWhole = (first == kept && second == other) || (first == other && second == kept);
        const bool isBegun = other.isNone() && (kept.isNone() || first == kept || second == kept);
        if (isWhole || isBegun) {
            m_list->setCurrentRow(static_cast<int>(i));
            choose(*m_kept, kept.isNone() ? first : kept);
            choose(*m_other, isWhole ? other : kept == second ? first : second);
            return;
        }
    }
}

std::pair<base::ClientId, base::ClientId> DuplicatesPage::chosen() const
{
    const auto idOf = [this](const QComboBox* box) {
        const int index = box->currentIndex();
        return index < 0 || index >= static_cast<int>(m_known.size()) ? base::ClientId() : m_known[static_cast<std::size_t>(index)].id;
    };
    return {idOf(m_kept), idOf(m_other)};
}

void DuplicatesPage::choose(QComboBox& box, base::ClientId client)
{
    for (std::size_t i = 0; i < m_known.size(); ++i) {
        if (m_known[i].id == client) {
            box.setCurrentIndex(static_cast<int>(i));
        }
    }
}

void DuplicatesPage::choosePair(int row)
{
    if (row < 0 || row >= static_cast<int>(m_pairs.size())) {
        return;
    }
    const tables::PersonMatch& pair = m_pairs[static_cast<std::size_t>(row)];
    choose(*m_kept, m_known[pair.first].id);
    choose(*m_other, m_known[pair.second].id);
    showPlan();
}

void DuplicatesPage::swapTwo()
{
    const auto [kept, other] = chosen();
    choose(*m_kept, other);
    choose(*m_other, kept);
    showPlan();
}

void DuplicatesPage::showPlan()
{
    const auto [kept, other] = chosen();
    if (kept.isNone() || other.isNone() || kept == other) {
        m_plan->setText(m_pairs.empty() ? tr("No two clients look like one. Choose two by hand where you know better.") : tr("Choose two clients."));
        m_merge->setEnabled(false);
        return;
    }
    const auto plan = store::planMerge(m_services.database, kept, other, m_services.clock.today());
    m_plan->setText(plan ? mergeText(*plan) : plan.error().message);
    m_merge->setEnabled(plan.has_value());
}

void DuplicatesPage::merge()
{
    const auto [kept, other] = chosen();
    const auto plan = store::planMerge(m_services.database, kept, other, m_services.clock.today());
    const auto merged = plan ? store::mergeClients(m_services.database, kept, other, m_services.atUtc(), m_services.clock.today()) : tl::make_unexpected(plan.error());
    if (!merged) {
        m_banner->setMessage({common::Signal::Warn, QStringLiteral("warning"), tr("Not merged."), merged.error().message});
        m_banner->show();
        return;
    }
    const QString words = tr("%1 merged into %2").arg(common::qstring(plan->fromName), common::qstring(plan->intoName));
    m_services.acts.add(merged->act, words);
    m_banner->setMessage({common::Signal::Info, QStringLiteral("check"), tr("Merged."), tr("%1. Ctrl Z takes it back.").arg(words)});
    m_banner->show();
    refresh();
    m_list->setFocus(Qt::OtherFocusReason);  // the button has nothing to do any more
    Q_EMIT studioChanged();
}

}  // namespace chalk::ui::people
