#include "ui/onboarding/profile_step.h"

#include "core/exchange/profile_json.h"
#include "core/store/client_reader.h"
#include "core/store/client_row_json.h"
#include "core/store/client_writer.h"
#include "core/store/studio_reader.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/clock.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/common/scroll_column.h"
#include "ui/common/settling.h"
#include "ui/onboarding/measures_panel.h"
#include "ui/onboarding/onboarding_case.h"
#include "ui/onboarding/typing_pause.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::onboarding {

ProfileStep::ProfileStep(const OnboardingServices& services, QWidget* parent)
    : OnboardingStep(parent),
      m_services(services),
      m_panel(new common::Panel(services.look, this)),
      m_fields(new ProfileFields(services.look)),
      m_sameName(new common::Banner(services.look, this)),
      m_measures(new MeasuresPanel(services, this)),
      m_pause(typingPause(this))
{
    build();
    connect(m_pause, &QTimer::timeout, this, &ProfileStep::save);
    connect(m_fields, &ProfileFields::typed, this, [this] {
        m_isTyped = true;
        if (!m_kept.client.id.isNone()) {
            m_pause->start();
        }
        m_fields->review(m_today);
    });
    connect(m_fields, &ProfileFields::settled, this, [this] {
        m_fields->review(m_today);
        save();
    });
    connect(m_measures, &MeasuresPanel::saved, this, &OnboardingStep::saved);
    connect(m_measures, &MeasuresPanel::refused, this, &OnboardingStep::refused);
}

void ProfileStep::build()
{
    m_panel->setTitle(tr("Profile"), tr("all of it can wait but the name"));
    auto* scroll = new QScrollArea(m_panel);
    common::holdColumn(*scroll, m_fields);
    m_sameName->hide();
    connect(m_sameName->addButton(tr("Open that client")), &QPushButton::clicked, this, [this] {
        Q_EMIT placeAsked({.page = QStringLiteral("client"), .client = m_other});
    });
    connect(m_sameName->addButton(tr("Somebody else")), &QPushButton::clicked, this, [this] { addClient(true); });
    m_panel->body()->addWidget(m_sameName);
    m_panel->body()->addWidget(scroll, 1);
    layOut(m_services.look, m_panel, m_measures);
}

void ProfileStep::setCase(const OnboardingCase& onboarding)
{
    const bool isOther = onboarding.client.id != m_kept.client.id;
    m_today = onboarding.today;
    if (isOther || !isBeingTyped()) {
        m_kept = {onboarding.client, onboarding.profile};
        m_isTyped = false;
    }
    if (isOther || onboarding.client.id.isNone()) {
        m_pause->stop();
        m_sameName->hide();
        m_fields->setCoaches(store::StudioReader(m_services.database).coaches().value_or(std::vector<clients::Coach>()));
    }
    m_fields->setUnitLocked(onboarding.hasLifts);
    m_fields->setNameOnly(onboarding.client.id.isNone());
    if (isOther) {
        m_fields->forgetTyping();
    }
    if (!isBeingTyped()) {
        m_fields->setEntry(m_kept, m_today);
    }
    m_measures->setCase(onboarding);
    m_measures->setVisible(!onboarding.client.id.isNone());
}

bool ProfileStep::isBeingTyped() const
{
    return m_isTyped && !m_kept.client.id.isNone() && m_fields->entryOn(m_kept) != m_kept;
}

void ProfileStep::takeFocus()
{
    m_fields->takeFocus();
}

bool ProfileStep::addClient(bool isSameNameMeant)
{
    const QString name = m_fields->nameField()->text().trimmed();
    if (name.isEmpty()) {
        return true;
    }
    const auto names = store::ClientReader(m_services.database).names();
    const auto same = names ? std::find_if(names->begin(), names->end(), [&name](const auto& one) {
        return common::qstring(one.second).compare(name, Qt::CaseInsensitive) == 0;
    }) : decltype(names->begin())();
    if (names && same != names->end() && !isSameNameMeant) {
        m_other = same->first;
        m_sameName->setMessage({common::Signal::Warn, QStringLiteral("client"), tr("There is a client of this name."), tr("Is it the same person?")});
        m_sameName->show();
        return true;
    }
    const auto added = store::ClientWriter(m_services.database).add(m_fields->entryOn(m_kept).client, m_today);
    if (!added) {
        Q_EMIT refused(added.error().message);
        return false;
    }
    m_sameName->hide();
    m_kept.client.id = *added;
    m_isTyped = false;
    Q_EMIT clientAdded(*added);
    Q_EMIT saved();
    m_fields->setNameOnly(false);
    m_fields->takeFocus();
    return true;
}

store::Result<void> ProfileStep::writeClient(clients::Client& client)
{
    return common::settled(m_services.dialogs, m_services.database, store::rowJson(m_kept.client), [&](const common::Settling& settling) {
        client = settling.merged ? store::clientIn(*settling.merged, client) : client;
        return store::ClientWriter(m_services.database).change(client, m_today, store::clientIn(*settling.seen, m_kept.client));
    });
}

store::Result<void> ProfileStep::writeProfile(base::ClientId client, clients::Profile& profile)
{
    return common::settled(m_services.dialogs, m_services.database, exchange::toJson(m_kept.profile), [&](const common::Settling& settling) {
        profile = settling.merged ? exchange::readProfile(*settling.merged, {}).value_or(profile) : profile;
        return store::ClientWriter(m_services.database).saveProfile(client, profile, m_today, settling.seen);
    });
}

bool ProfileStep::save()
{
    m_pause->stop();
    if (m_kept.client.id.isNone()) {
        return addClient(false);
    }
    ProfileEntry next = m_fields->entryOn(m_kept);
    if (next.client.unit != m_kept.client.unit && next.client.bodyMass) {
        next.client.bodyMass = base::Mass::of(*next.client.bodyMass, m_kept.client.unit).in(next.client.unit);
    }
    if (next == m_kept) {
        return true;
    }
    if (const auto changed = next.client == m_kept.client ? store::Result<void>() : writeClient(next.client); !changed) {
        return tellFailure(changed.error());
    }
    if (const auto changed = next.profile == m_kept.profile ? store::Result<void>() : writeProfile(next.client.id, next.profile); !changed) {
        return tellFailure(changed.error());
    }
    m_kept = next;
    m_isTyped = false;
    Q_EMIT saved();
    return true;
}

bool ProfileStep::tellFailure(const store::StoreError& error)
{
    m_isTyped = m_isTyped && error.kind != store::StoreError::Kind::Conflict;  // a conflict is settled: theirs is kept
    tell(error);
    return false;
}

bool ProfileStep::keep()
{
    return save();
}

std::vector<shell::KeyHint> ProfileStep::keyHints() const
{
    return {{tr("Tab"), tr("Next field")}};
}

bool ProfileStep::closeOrClear()
{
    return m_measures->closeEditor();
}

}  // namespace chalk::ui::onboarding
