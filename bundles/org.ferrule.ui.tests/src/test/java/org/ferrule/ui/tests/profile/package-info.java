/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Tests of the views about profiles. */
package org.ferrule.ui.tests.profile;
