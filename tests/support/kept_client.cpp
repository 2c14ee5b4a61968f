#include "tests/support/kept_client.h"

#include "tests/support/lift_on_test.h"
#include "tests/support/marked_screen.h"

namespace chalk::test {

namespace {

clients::Profile someProfile(base::Date day)
{
    clients::Profile profile;
    profile.pronouns = "she";
    profile.sex = clients::NormSex::Female;
    profile.contact.phone = "0700 900 111";
    profile.sessionMinutes = 45;
    static_cast<void>(profile.free.add({1, 420, 600}));
    profile.homeKit = {lifts::EquipmentKind::Kettlebell};
    profile.consentOn = day;
    return profile;
}

clients::HealthIntake someIntake(base::Date day)
{
    clients::HealthIntake intake;
    intake.answerTo(clients::HealthQuestion::HeartOrPressure) = {true, {clients::marksOf(clients::HealthQuestion::HeartOrPressure).front()}, "since 2019"};
    intake.isRegularExerciser = false;
    intake.resting.heartRate = 72;
    intake.agreedOn = day;
    return intake;
}

planning::PlanDraft someDraft(base::Date day)
{
    planning::PlanDraft draft;
    draft.templateKey = "two_full";
    draft.of(lifts::Pattern::Squat) = {progression::StartChoice{progression::Stage::Control, "trained before"}, "goblet_squat", "dumbbells", kilos(8), false, {}};
    draft.of(lifts::Pattern::CarryBrace).isLeftOut = true;
    draft.slots = {{0, 1, 540}, {1, 3, 1080}};
    draft.firstDay = day;
    return draft;
}

planning::PlanTemplate ownTemplate()
{
    planning::PlanTemplate plan;
    plan.key = "own_short";
    plan.name = "Short week";
    plan.sessions = {{"A", {lifts::Pattern::Hinge, lifts::Pattern::Squat}}};
    plan.isOrderKept = true;
    plan.exercises[0] = {{"goblet_squat"}, {"bodyweight_squat"}};
    return plan;
}

}  // namespace

void addKept(studio::StudioDocument& document)
{
    const base::Date day = document.today - 40;
    clients::BodyMeasures measures;
    measures.date = day;
    measures.waist = clients::Millimetres(910);
    measures.skinfolds = clients::Skinfolds{123, 201, 157};
    studio::DocumentClient& client = document.clients.front();
    client.forms = {{day, false, someProfile(day)},
                    {day, true, someIntake(day)},
                    {day, true, measures},
                    {day, true, markedMovementScreen(day)},
                    {document.today, false, someIntake(document.today)},
                    {document.today, false, someDraft(document.today + 3)},
                    {document.today, false,
                     screens::FieldTestDay{document.today, {screens::PushUps{base::Reps(9), screens::PushUpForm::Knees}, screens::SitAndReach{-45, 230}}}}};
    const clients::HealthMark mark = clients::marksOf(clients::HealthQuestion::HeartOrPressure).front();
    client.letters = {{"Dr Hale", day, day + 180, "No breath-holding", {mark}, "hale.pdf", std::string("%PDF\0\xff", 6)}, {"Dr Moor", day + 7, {}, "", {}, "", ""}};
    client.clearance.state = clients::ClearanceState::Granted;
    client.clearance.grantedOn = day;
    client.clearance.grantedBy = "Dr Hale";
    client.plannedLifts = {{"S3", {lifts::Pattern::Hinge, lifts::Pattern::Squat}}, {"S2", {lifts::Pattern::Squat}}};
    client.leftOut = {{"S3", {{lifts::Pattern::Hinge, "no time"}}}};
    client.reports = {{"S1", {{}, {}, {}, 75, 55, "Late from work\nBack squat: belt on"}}, {"S2", {4, 2, 1, 60, {}, {}}}};
    document.templates = {ownTemplate()};
    document.restingLimits.heartRate = 110;
}

}  // namespace chalk::test
