#include "core/store/decision_rows.h"

#include "core/store/decision_reader.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

TEST(DecisionRows, EveryFindingAndChoiceReadsBack)
{
    test::StudioOnTest studio;
    Database& database = studio.database();
    const base::ClientId ada = test::clientNamed(database, "Ada Lund");
    std::vector<checkin::Decision> written;
    {
        Transaction transaction(database);
        for (const checkin::FindingKind about : checkin::kFindingKinds) {
            for (const checkin::ChoiceKind choice : checkin::kChoiceKinds) {
                const base::Date day = test::smallStudioDay() - static_cast<int>(written.size());
                const base::LiftId hinge = test::liftOf(database, ada, lifts::Pattern::Hinge);
                written.push_back({base::ActId(1), ada, hinge, day, about, choice, "ä \"note\"", day + 3});
                insertDecision(database, written.back());
            }
        }
        ASSERT_TRUE(transaction.commit());
    }
    EXPECT_EQ(DecisionReader(database).history(ada).value(), written);
}

}  // namespace chalk::store
