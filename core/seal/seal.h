#pragma once
// The last steps of a record, when its pages are painted: dress it for keeping (dress.h).

#include "seal/dress.h"
