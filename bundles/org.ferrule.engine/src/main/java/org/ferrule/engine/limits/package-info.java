/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Published limits and scores beside a plan, from what a case states of patient and lesion. They order and remind; none
 * of them is a chance, and none becomes one.
 */
package org.ferrule.engine.limits;
