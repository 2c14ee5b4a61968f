#include "ui/roster/filter_choice.h"

#include "ui/common/formats.h"

#include <QCoreApplication>

namespace chalk::ui::roster {

namespace {

QString choiceWords(const char* text)
{
    return QCoreApplication::translate("Roster", text);
}

}  // namespace

bool FilterChoice::isOn(const RosterCriteria& criteria) const
{
    switch (group) {
    case ChoiceGroup::Everybody:
        return !criteria.coach && !criteria.phase && !criteria.isFlagged && !criteria.flag;
    case ChoiceGroup::Coach:
        return criteria.coach == coach;
    case ChoiceGroup::Phase:
        return criteria.phase == phase;
    case ChoiceGroup::Flag:
        return flag ? criteria.flag == flag : criteria.isFlagged;
    }
    return false;
}

RosterCriteria FilterChoice::on(RosterCriteria criteria) const
{
    criteria = off(std::move(criteria));
    switch (group) {
    case ChoiceGroup::Everybody:
        break;
    case ChoiceGroup::Coach:
        criteria.coach = coach;
        break;
    case ChoiceGroup::Phase:
        criteria.phase = phase;
        break;
    case ChoiceGroup::Flag:
        criteria.isFlagged = !flag;
        criteria.flag = flag;
        break;
    }
    return criteria;
}

RosterCriteria FilterChoice::off(RosterCriteria criteria) const
{
    if (group == ChoiceGroup::Coach || group == ChoiceGroup::Everybody) {
        criteria.coach.reset();
    }
    if (group == ChoiceGroup::Phase || group == ChoiceGroup::Everybody) {
        criteria.phase.reset();
    }
    if (group == ChoiceGroup::Flag || group == ChoiceGroup::Everybody) {
        criteria.isFlagged = false;
        criteria.flag.reset();
    }
    return criteria;
}

std::vector<FilterChoice> filterChoices(const std::vector<clients::Coach>& coaches)
{
    using checkin::ClientFlag;
    std::vector<FilterChoice> choices{{ChoiceGroup::Everybody, choiceWords(QT_TRANSLATE_NOOP("Roster", "All"))}};
    for (const clients::Coach& coach : coaches) {
        choices.push_back({ChoiceGroup::Coach, common::qstring(coach.name), coach.id});
    }
    choices.push_back({ChoiceGroup::Phase, choiceWords(QT_TRANSLATE_NOOP("Roster", "Learning, 1–3")), {}, checkin::Phase::Learning});
    choices.push_back({ChoiceGroup::Phase, choiceWords(QT_TRANSLATE_NOOP("Roster", "Building, 4–7")), {}, checkin::Phase::Building});
    choices.push_back({ChoiceGroup::Flag, choiceWords(QT_TRANSLATE_NOOP("Roster", "Flagged"))});
    choices.push_back({ChoiceGroup::Flag, tagOf(ClientFlag::Away).text, {}, {}, ClientFlag::Away});
    for (const ClientFlag flag : checkin::kClientFlags) {
        if (flag != ClientFlag::Away) {
            choices.push_back({ChoiceGroup::Flag, tagOf(flag).text, {}, {}, flag, false});
        }
    }
    return choices;
}

}  // namespace chalk::ui::roster
