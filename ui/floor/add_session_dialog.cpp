#include "ui/floor/add_session_dialog.h"

#include "ui/common/action_button.h"
#include "ui/common/formats.h"
#include "ui/common/fuzzy_match.h"
#include "ui/common/look.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

constexpr int kQuarter = 15;
constexpr int kFirstStart = 5 * 60;
constexpr int kLastStart = 22 * 60 + 45;
constexpr int kUsualMinutes = 60;
constexpr double kBookingWidth = 420;
constexpr double kBookingHeight = 460;

}  // namespace

AddSessionDialog::AddSessionDialog(const common::Look& look, BookingChoices choices, base::Date day, int minute, QWidget* parent)
    : QDialog(parent),
      m_look(look),
      m_choices(std::move(choices)),
      m_day(day),
      m_name(new QLineEdit(this)),
      m_list(new QListWidget(this)),
      m_time(new QComboBox(this)),
      m_minutes(new QSpinBox(this)),
      m_coach(new QComboBox(this)),
      m_none(new QLabel(tr("Nobody of that name."), this))
{
    setWindowTitle(tr("Add a session"));
    build(minute);
    showFitting();
    m_name->setFocus(Qt::OtherFocusReason);
}

void AddSessionDialog::build(int minute)
{
    m_name->setPlaceholderText(tr("Name or part of it"));
    m_name->setAccessibleName(tr("Who comes"));
    m_name->installEventFilter(this);
    m_list->setAccessibleName(tr("Clients that fit"));
    m_none->setProperty("role", QStringLiteral("secondary"));
    for (int start = kFirstStart; start <= kLastStart; start += kQuarter) {
        m_time->addItem(common::qstring(sessions::clockText(start)), start);
    }
    m_time->setCurrentIndex(std::clamp((minute - kFirstStart) / kQuarter, 0, m_time->count() - 1));
    m_time->setAccessibleName(tr("Start"));
    m_minutes->setRange(15, 240);
    m_minutes->setSingleStep(kQuarter);
    m_minutes->setValue(kUsualMinutes);
    m_minutes->setSuffix(tr(" min"));
    m_minutes->setAccessibleName(tr("Length"));
    m_coach->setAccessibleName(tr("Coach"));
    for (const clients::Coach& coach : m_choices.coaches) {
        m_coach->addItem(common::qstring(coach.name), QVariant::fromValue(coach.id.value()));
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(10);
    column->addWidget(m_name);
    column->addWidget(m_list, 1);
    column->addWidget(m_none);
    auto* form = new QFormLayout;
    form->addRow(tr("Start on %1").arg(common::shortDayText(m_day)), m_time);
    form->addRow(tr("Length"), m_minutes);
    form->addRow(tr("Coach"), m_coach);
    column->addLayout(form);
    auto* foot = new QHBoxLayout;
    auto* book = new common::ActionButton(m_look, tr("Add the session"), this);
    book->setKind(common::ButtonKind::Primary);
    book->setKeyText(tr("Enter"));
    book->setDefault(true);
    auto* leave = new common::ActionButton(m_look, tr("Leave"), this);
    leave->setKeyText(tr("Esc"));
    leave->setAutoDefault(false);
    connect(book, &QPushButton::clicked, this, [this] {
        if (session()) {
            accept();
        }
    });
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    foot->addStretch(1);
    foot->addWidget(leave);
    foot->addWidget(book);
    column->addLayout(foot);
    connect(m_name, &QLineEdit::textChanged, this, &AddSessionDialog::showFitting);
    connect(m_list, &QListWidget::currentRowChanged, this, &AddSessionDialog::followClient);
    connect(m_list, &QListWidget::itemDoubleClicked, this, &QDialog::accept);
    connect(m_coach, &QComboBox::activated, this, [this] { m_isCoachChosen = true; });
    resize(qRound(m_look.theme().scaled(kBookingWidth)), qRound(m_look.theme().scaled(kBookingHeight)));
}

void AddSessionDialog::showFitting()
{
    std::vector<std::pair<int, std::size_t>> fitting;
    for (std::size_t i = 0; i < m_choices.clients.size(); ++i) {
        const auto score = m_name->text().trimmed().isEmpty() ? std::optional(0) : common::matchScore(m_name->text(), common::qstring(m_choices.clients[i].name), common::Typos::Allowed);
        if (score) {
            fitting.emplace_back(-*score, i);
        }
    }
    std::stable_sort(fitting.begin(), fitting.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    m_list->clear();
    for (const auto& [score, index] : fitting) {
        auto* item = new QListWidgetItem(common::qstring(m_choices.clients[index].name), m_list);
        item->setData(Qt::UserRole, static_cast<int>(index));
    }
    m_none->setVisible(fitting.empty());
    m_list->setCurrentRow(fitting.empty() ? -1 : 0);
}

void AddSessionDialog::followClient()
{
    if (m_isCoachChosen || m_list->currentItem() == nullptr) {
        return;
    }
    const clients::Client& client = m_choices.clients[static_cast<std::size_t>(m_list->currentItem()->data(Qt::UserRole).toInt())];
    m_coach->setCurrentIndex(std::max(0, m_coach->findData(QVariant::fromValue(client.coach.value()))));
}

bool AddSessionDialog::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_name && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        const int by = key == Qt::Key_Down ? 1 : key == Qt::Key_Up ? -1 : 0;
        if (by != 0 && m_list->count() > 0) {
            m_list->setCurrentRow(std::clamp(m_list->currentRow() + by, 0, m_list->count() - 1));
            return true;
        }
    }
    return QDialog::eventFilter(watched, event);
}

std::optional<sessions::Session> AddSessionDialog::session() const
{
    if (m_list->currentItem() == nullptr || m_coach->currentIndex() < 0) {
        return std::nullopt;
    }
    sessions::Session session;
    session.client = m_choices.clients[static_cast<std::size_t>(m_list->currentItem()->data(Qt::UserRole).toInt())].id;
    session.coach = base::CoachId(m_coach->currentData().toLongLong());
    session.date = m_day;
    session.startMinute = m_time->currentData().toInt();
    session.minutes = m_minutes->value();
    session.place = "Floor";
    return session;
}

}  // namespace chalk::ui::floor
