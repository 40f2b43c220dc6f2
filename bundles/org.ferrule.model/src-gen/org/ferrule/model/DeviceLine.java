/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Device Line</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What the sizes of one line of devices have in common.
 * <!-- end-model-doc -->
 *
 *
 * @see org.ferrule.model.ModelPackage#getDeviceLine()
 * @model
 * @generated
 */
public interface DeviceLine extends DeviceParts
{
} // DeviceLine
