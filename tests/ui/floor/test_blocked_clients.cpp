#include "core/store/client_writer.h"
#include "tests/ui/floor/floor_fixture.h"
#include "ui/board/board_words.h"
#include "ui/board/client_presenter.h"
#include "ui/common/health_words.h"
#include "ui/floor/entry_reading.h"

#include <rapidcheck.h>

namespace chalk::ui::floor {

namespace {

/// Somebody's answers: mostly no, some open, some marked.
clients::HealthIntake anyIntake()
{
    clients::HealthIntake intake;
    for (int i = 0; i < clients::kHealthQuestionCount; ++i) {
        const auto question = static_cast<clients::HealthQuestion>(i);
        clients::HealthAnswer& answer = intake.answerTo(question);
        const int kind = *rc::gen::inRange(0, 40);
        if (kind == 0) {
            continue;
        }
        answer.isYes = kind <= 4;
        for (const clients::HealthMark mark : clients::marksOf(question)) {
            if (*rc::gen::inRange(0, 3) == 0) {
                answer.marks.push_back(mark);
            }
        }
    }
    if (*rc::gen::inRange(0, 20) != 0) {
        intake.isRegularExerciser = *rc::gen::arbitrary<bool>();
    }
    intake.intended = static_cast<clients::Intensity>(*rc::gen::inRange(0, 3));
    if (*rc::gen::inRange(0, 6) == 0) {
        intake.resting = {*rc::gen::inRange(50, 130), *rc::gen::inRange(110, 200), *rc::gen::inRange(60, 109)};
    }
    return intake;
}

bool saysLoad(const QString& text)
{
    return text.contains(QStringLiteral("kg")) || text.contains(QStringLiteral("kilogram")) || text.contains(QStringLiteral("×"));
}

/// Whether any box of the board, or its words for screen readers, names a load or sets of the next session.
bool boardSaysLoad(const board::ClientCase& client)
{
    const board::BoardColumns columns = board::columnsOf(client);
    return std::any_of(columns.begin(), columns.end(), [](const board::BoardColumn& one) {
        return saysLoad(one.title) || saysLoad(one.sub) || saysLoad(one.spoken) || (one.need && saysLoad(one.need->title));
    });
}

}  // namespace

/// Ada, who trains with load, gives her answers.
class BlockedClientsTest : public test::FloorTest {
protected:
    BlockedClientsTest() : m_ada(test::clientNamed(m_studio.database(), "Ada Lund")) {}

    void consent()
    {
        clients::Profile profile;
        profile.consentOn = m_today;
        ASSERT_TRUE(store::ClientWriter(m_studio.database()).saveProfile(m_ada, profile, m_today));
    }

    clients::HealthOutcome give(const clients::HealthIntake& intake)
    {
        const clients::RestingLimits limits;
        const QString reason = common::outcomeReason(clients::outcomeOf(intake, limits));
        return store::ClientWriter(m_studio.database()).saveIntake(m_ada, intake, limits, reason.toStdString(), m_today).value();
    }

    board::ClientCase onBoard() { return board::ClientPresenter(m_studio.database(), m_catalogue, test::someMoment).read(m_ada, m_today).value(); }
    FloorClient onFloor() { return m_presenter.clients(m_presenter.run(m_today)->front(), m_today)->front(); }

    /// What board, floor and card say must follow from whether the clearance blocks.
    void checkEverywhere(bool isBlocked)
    {
        RC_ASSERT(onBoard().isBlocked() == isBlocked);
        RC_ASSERT(boardSaysLoad(onBoard()) == !isBlocked);
        const FloorClient onTheFloor = onFloor();
        RC_ASSERT(onTheFloor.isBlocked == isBlocked);
        RC_ASSERT(onTheFloor.lifts.empty() == isBlocked);
        RC_ASSERT(m_presenter.cardOf(onTheFloor).lifts.empty() == isBlocked);
        const FloorClient atAnyTime = m_presenter.forCard(m_ada, m_today, 600).value();
        RC_ASSERT(m_presenter.cardOf(atAnyTime).lifts.empty() == isBlocked);
        RC_ASSERT(atAnyTime.others.empty() || !isBlocked);
        if (!m_free.lifts.empty()) {
            FloorClient typed = m_free;
            typed.isBlocked = onTheFloor.isBlocked;
            typed.clearance = onTheFloor.clearance;
            const EntryReading reading = readEntry(typed, typed.lifts.front());
            RC_ASSERT((reading.state == EntryState::Blocked) == isBlocked);
        }
    }

    const base::Date m_today = test::smallStudioDay();
    const base::ClientId m_ada;
    FloorClient m_free{};  ///< as before the answers, with something typed
};

TEST_F(BlockedClientsTest, NobodyWithABlockingOutcomeIsGivenALoadAnywhere)
{
    consent();
    ASSERT_TRUE(boardSaysLoad(onBoard()));
    m_free = onFloor();
    m_free.lifts.front().line = QStringLiteral("8 8");
    int blocked = 0;
    int free = 0;
    const bool isHeld = rc::check("nobody with a blocking outcome is given a load", [&] {
        const clients::HealthOutcome outcome = give(anyIntake());
        const bool isBlocked = clients::clearanceStateAfter(outcome) != clients::ClearanceState::NotNeeded;
        ++(isBlocked ? blocked : free);
        checkEverywhere(isBlocked);
    });
    EXPECT_TRUE(isHeld);
    EXPECT_GT(blocked, 10);
    EXPECT_GT(free, 3);
}

TEST_F(BlockedClientsTest, ALetterFreesUntilItsLastDay)
{
    consent();
    clients::HealthIntake intake;
    for (clients::HealthAnswer& answer : intake.answers) {
        answer.isYes = false;
    }
    intake.isRegularExerciser = false;
    intake.answerTo(clients::HealthQuestion::SupervisedOnly).isYes = true;
    give(intake);
    EXPECT_TRUE(onBoard().isBlocked());
    store::Letter letter;
    letter.writtenBy = "Dr Vane";
    letter.day = m_today - 20;
    letter.validUntil = m_today;
    ASSERT_TRUE(store::ClientWriter(m_studio.database()).recordLetter(m_ada, letter, m_today));
    EXPECT_FALSE(onBoard().isBlocked());
    EXPECT_TRUE(boardSaysLoad(onBoard()));
    const auto tomorrow = board::ClientPresenter(m_studio.database(), m_catalogue, test::someMoment).read(m_ada, m_today + 1).value();
    EXPECT_TRUE(tomorrow.isBlocked());
    EXPECT_FALSE(boardSaysLoad(tomorrow));
}

}  // namespace chalk::ui::floor
