/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Costs</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An amount of time, contrast medium, dose and money.
 * <!-- end-model-doc -->
 *
 *
 * @see org.ferrule.model.ModelPackage#getCosts()
 * @model
 * @generated
 */
public interface Costs extends Costed
{
} // Costs
