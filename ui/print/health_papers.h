#pragma once

#include "core/clients/client.h"
#include "core/clients/health_intake.h"
#include "core/clients/profile.h"
#include "ui/print/paper.h"
#include "ui/print/sheet.h"

#include <QString>

#include <string>
#include <vector>

namespace chalk::ui::print {

/// The papers of a health intake: what was answered, what the client agrees to, a letter to the doctor.
enum class HealthPaper : std::uint8_t { Intake, Consent, DoctorLetter };

/// What they say; how it is worded is said in health_papers.cpp.
struct HealthPaperContent {
    std::string studioName;
    std::string coachName;
    clients::Client client;
    clients::Profile profile;
    clients::Clearance clearance;
    clients::HealthIntake intake;
    clients::HealthOutcome outcome;
    std::vector<clients::Caution> cautions;
    base::Date today;
};

/// `Health intake`.
[[nodiscard]] QString titleOf(HealthPaper paper);

/// What a paper is called where it is saved, without an ending: `health-intake-tove-aldane-2026-11-24`. No letter of it parts folders.
[[nodiscard]] QString paperFileName(HealthPaper paper, const HealthPaperContent& content);

/// All pages of a paper, for A4 or Letter: our own plain wording, no diagnosis, lines for signatures. It flows to as many pages as it takes.
[[nodiscard]] std::vector<Sheet> healthSheets(HealthPaper paper, const HealthPaperContent& content, PaperSize size);

}  // namespace chalk::ui::print
