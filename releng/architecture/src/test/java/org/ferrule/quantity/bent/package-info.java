/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Classes that bend the rules, so that the rules can be seen to fail. */
package org.ferrule.quantity.bent;
