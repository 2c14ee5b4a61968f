#include "core/store/role.h"

namespace chalk::store {

namespace {

constexpr Role kRoles[] = {Role::Owner, Role::Coach, Role::FrontDesk};

}  // namespace

bool may(Role role, Right right)
{
    switch (right) {
    case Right::SeeHealth:
    case Right::WriteHealth:
    case Right::Record:
        return role != Role::FrontDesk;
    case Right::Book:
        return true;
    case Right::ChangeStudio:
    case Right::EraseClient:
    case Right::SeeLogins:
        return role == Role::Owner;
    }
    return false;
}

std::string_view keyOf(Role role)
{
    switch (role) {
    case Role::Owner:
        return "owner";
    case Role::Coach:
        return "coach";
    case Role::FrontDesk:
        return "front-desk";
    }
    return {};
}

std::optional<Role> roleOf(std::string_view key)
{
    for (const Role role : kRoles) {
        if (keyOf(role) == key) {
            return role;
        }
    }
    return std::nullopt;
}

}  // namespace chalk::store
