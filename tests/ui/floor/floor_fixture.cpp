#include "tests/ui/floor/floor_fixture.h"

#include "core/store/history_reader.h"

#include <algorithm>
#include <stdexcept>

namespace chalk::test {

exchange::StudioDocument floorStudio()
{
    exchange::StudioDocument document = smallStudio();
    exchange::DocumentLift split;
    split.pattern = lifts::Pattern::SingleLeg;
    split.exerciseKey = "split_squat";
    split.equipmentKey = "dumbbells";
    split.setup = lowerLift(fixedKit({6, 8, 10, 12}));
    split.setup.kit.pieces = 2;
    split.startedOn = smallStudioDay() - 10;
    document.clients[0].lifts.push_back(split);
    sessions::Session ofBo;
    ofBo.client = base::ClientId(2);
    ofBo.coach = base::CoachId(2);
    ofBo.date = smallStudioDay();
    ofBo.startMinute = 600;
    ofBo.place = "Floor";
    ofBo.code = "B1";
    document.clients[1].sessions = {ofBo};
    return document;
}

const ui::floor::FloorLift& FloorTest::chooseLift(ui::floor::FloorDesk& desk, const std::string& exercise)
{
    const auto& lifts = desk.client()->lifts;
    const auto at = std::find_if(lifts.begin(), lifts.end(), [&exercise](const ui::floor::FloorLift& one) { return one.exercise.key == exercise; });
    if (at == lifts.end()) {
        throw std::logic_error("no lift " + exercise);
    }
    desk.chooseLift(static_cast<int>(at - lifts.begin()));
    return *desk.lift();
}

std::size_t FloorTest::entriesOf(base::LiftId lift)
{
    const auto history = store::HistoryReader(m_studio.database()).read(lift);
    return history ? history->size() : 0;
}

}  // namespace chalk::test
