#include "core/simulation/harbour_check_ins.h"

#include <optional>
#include <string_view>

namespace chalk::simulation {

namespace {

using checkin::ChoiceKind;
using checkin::FindingKind;
using lifts::Pattern;

constexpr int kWeek = 7;

/// One decision, with the days counted back from the studio's day.
struct ToldDecision {
    std::string_view who;
    std::optional<Pattern> lift;
    int daysAgo;
    FindingKind about;
    ChoiceKind choice;
    const char* note;
    int reviewDays = kWeek;
};

constexpr ToldDecision kDecisions[] = {
    {"Priya Venn", Pattern::SingleLeg, 100, FindingKind::Plateau, ChoiceKind::Swap, "Both feet on the floor until the knee tracks well"},
    {"Noor Castell", Pattern::Squat, 61, FindingKind::Rescreen, ChoiceKind::Rescreen, "Depth has crept up"},
    {"Noor Castell", Pattern::CarryBrace, 61, FindingKind::OnCourse, ChoiceKind::ByHand,
     "Short rests before the show, fewer metres for them", 4 * kWeek},
    {"Beatrix Lowe", Pattern::Hinge, 40, FindingKind::Attendance, ChoiceKind::ByHand, "Moved house: starts again a little lower"},
    {"Mireille Dacosta", Pattern::HorizontalPull, 38, FindingKind::Plateau, ChoiceKind::LighterWeek, "Long days at work, little sleep"},
    {"Mireille Dacosta", {}, 31, FindingKind::Direction, ChoiceKind::Direction, "Stays with strength until the snow comes", 4 * kWeek},
    {"Lars Pemberley", Pattern::HorizontalPull, 28, FindingKind::OnCourse, ChoiceKind::Hold, "Slept badly: the same once more"},
    {"Lars Pemberley", {}, 21, FindingKind::Direction, ChoiceKind::Direction, "One more cycle: back to the ladder until spring", 2 * kWeek},
    {"Dmitri Oake", {}, 14, FindingKind::OnCourse, ChoiceKind::LighterWeek, "Moves house this week"},
};

}  // namespace

void addDecisions(studio::DocumentClient& client, base::Date today)
{
    for (const ToldDecision& told : kDecisions) {
        if (told.who == client.client.name) {
            const base::Date day = today - told.daysAgo;
            client.decisions.push_back({day, told.lift, told.about, told.choice, told.note, day + told.reviewDays});
        }
    }
}

}  // namespace chalk::simulation
