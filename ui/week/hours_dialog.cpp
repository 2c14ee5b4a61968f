#include "ui/week/hours_dialog.h"

#include "ui/common/action_button.h"
#include "ui/common/formats.h"
#include "ui/common/hours_grid.h"
#include "ui/common/look.h"
#include "ui/common/scroll_column.h"
#include "ui/print/group_words.h"
#include "ui/week/closures_editor.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace chalk::ui::week {

namespace {

constexpr double kDialogWidth = 860;
constexpr double kDialogHeight = 640;
constexpr double kNamesWidth = 190;
constexpr int kMostUnits = 20;

QWidget* scrolled(QWidget* contents)
{
    auto* area = new QScrollArea;
    area->setFrameShape(QFrame::NoFrame);
    common::holdColumn(*area, contents);
    return area;
}

QLabel* hintOf(const QString& text)
{
    auto* hint = new QLabel(text);
    hint->setWordWrap(true);
    hint->setProperty("role", QStringLiteral("secondary"));
    return hint;
}

}  // namespace

HoursDialog::HoursDialog(const common::Look& look, store::Database& database, common::Dialogs& dialogs, base::Date today, QWidget* parent)
    : QDialog(parent),
      m_look(look),
      m_hours(database, dialogs),
      m_names(new QListWidget(this)),
      m_parts(new QStackedWidget(this)),
      m_told(new QLabel(this))
{
    setWindowTitle(tr("Hours and closures"));
    m_hours.read(today);
    m_names->setAccessibleName(tr("Hours and closures"));
    m_names->setFixedWidth(qRound(look.theme().scaled(kNamesWidth)));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(12);
    auto* row = new QHBoxLayout;
    row->setSpacing(16);
    row->addWidget(m_names);
    row->addWidget(m_parts, 1);
    column->addLayout(row, 1);
    m_told->setWordWrap(true);
    m_told->setProperty("role", QStringLiteral("fault"));
    m_told->hide();
    column->addWidget(m_told);
    auto* closures = new ClosuresEditor(look, m_hours, today, this);
    connect(closures, &ClosuresEditor::changed, this, &HoursDialog::changed);
    addPart(tr("Closures"), closures);
    addPart(tr("Opening hours"), studioPart());
    for (const clients::Coach& coach : m_hours.coaches()) {
        addPart(common::qstring(coach.name), coachPart(coach));
    }
    addPart(tr("Stations"), stationsPart());
    connect(m_names, &QListWidget::currentRowChanged, m_parts, &QStackedWidget::setCurrentIndex);
    m_names->setCurrentRow(0);
    auto* close = new common::ActionButton(look, tr("Close"), this);
    close->setKeyText(tr("Esc"));
    close->setAutoDefault(false);
    connect(close, &QPushButton::clicked, this, &QDialog::accept);
    column->addWidget(close, 0, Qt::AlignRight);
    resize(qRound(look.theme().scaled(kDialogWidth)), qRound(look.theme().scaled(kDialogHeight)));
}

void HoursDialog::addPart(const QString& name, QWidget* part)
{
    m_names->addItem(name);
    m_parts->addWidget(part);
}

void HoursDialog::told(bool isDone)
{
    for (const auto& show : m_shows) {
        show();
    }
    m_told->setText(m_hours.refusal());
    m_told->setVisible(!m_told->text().isEmpty());
    if (isDone) {
        Q_EMIT changed();
    }
}

common::HoursGrid* HoursDialog::hoursGrid(const QString& name, const clients::WeekHours& hours)
{
    auto* grid = new common::HoursGrid(m_look);
    grid->setAccessibleName(name);
    grid->setHours(hours, {});
    return grid;
}

QWidget* HoursDialog::studioPart()
{
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(hintOf(tr("When the studio is open, every week. Drag to paint; Delete takes hours away, Space sets them.")));
    auto* grid = hoursGrid(tr("Opening hours"), m_hours.studio().open);
    connect(grid, &common::HoursGrid::painted, this, [this, grid] { told(m_hours.setOpen(grid->free())); });
    m_shows.emplace_back([this, grid] { grid->setHours(m_hours.studio().open, {}); });
    column->addWidget(grid, 1);
    return scrolled(part);
}

QWidget* HoursDialog::coachPart(const clients::Coach& coach)
{
    const QString name = common::qstring(coach.name);
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(hintOf(tr("When %1 is there, every week. A break is a hole in the hours.").arg(name)));
    auto* grid = hoursGrid(tr("Hours of %1").arg(name), m_hours.hoursOf(coach.id));
    connect(grid, &common::HoursGrid::painted, this, [this, grid, id = coach.id] { told(m_hours.setHours(id, grid->free())); });
    column->addWidget(grid, 1);
    auto* places = new QSpinBox(part);
    places->setRange(1, chalk::week::kMostCapacity);
    places->setValue(m_hours.workOf(coach.id).capacity);
    places->setAccessibleName(tr("Clients at once with %1").arg(name));
    connect(places, &QSpinBox::valueChanged, this, [this, id = coach.id](int capacity) { told(m_hours.setCapacity(id, capacity)); });
    m_shows.emplace_back([this, grid, places, id = coach.id] {
        const QSignalBlocker quiet(places);
        grid->setHours(m_hours.hoursOf(id), {});
        places->setValue(m_hours.workOf(id).capacity);
    });
    auto* form = new QFormLayout;
    form->addRow(tr("Clients at once"), places);
    column->addLayout(form);
    return scrolled(part);
}

QWidget* HoursDialog::stationsPart()
{
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(hintOf(tr("How many of each there are. 0: nobody has to wait for it.")));
    auto* form = new QFormLayout;
    for (const lifts::Station station : {lifts::Station::Rack, lifts::Station::Bench, lifts::Station::Machine, lifts::Station::PullUpBar, lifts::Station::Lane}) {
        const auto present = [this, station] {
            const auto own = m_hours.studio().stations.find(station);
            return own == m_hours.studio().stations.end() ? 0 : own->second;
        };
        auto* units = new QSpinBox(part);
        units->setRange(0, kMostUnits);
        units->setValue(present());
        units->setAccessibleName(print::stationName(station));
        connect(units, &QSpinBox::valueChanged, this, [this, station](int count) { told(m_hours.setUnits(station, count)); });
        m_shows.emplace_back([units, present] {
            const QSignalBlocker quiet(units);
            units->setValue(present());
        });
        form->addRow(print::stationName(station), units);
    }
    column->addLayout(form);
    column->addStretch(1);
    return scrolled(part);
}

}  // namespace chalk::ui::week
