/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>After Use Rule</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How much the crossing profile of a balloon grows by use, as factors.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.AfterUseRule#getKinds <em>Kinds</em>}</li>
 *   <li>{@link org.ferrule.model.AfterUseRule#getGrowthLow <em>Growth Low</em>}</li>
 *   <li>{@link org.ferrule.model.AfterUseRule#getGrowthCentre <em>Growth Centre</em>}</li>
 *   <li>{@link org.ferrule.model.AfterUseRule#getGrowthHigh <em>Growth High</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getAfterUseRule()
 * @model
 * @generated
 */
public interface AfterUseRule extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Kinds</b></em>' attribute list.
	 * The list contents are of type {@link org.ferrule.model.DeviceKind}.
	 * The literals are from the enumeration {@link org.ferrule.model.DeviceKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The kinds of device that the rule is for; all when none is named.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kinds</em>' attribute list.
	 * @see org.ferrule.model.DeviceKind
	 * @see org.ferrule.model.ModelPackage#getAfterUseRule_Kinds()
	 * @model unique="false"
	 * @generated
	 */
	EList<DeviceKind> getKinds();

	/**
	 * Returns the value of the '<em><b>Growth Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The smallest factor.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Growth Low</em>' attribute.
	 * @see #setGrowthLow(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getAfterUseRule_GrowthLow()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 above='0'"
	 * @generated
	 */
	BigDecimal getGrowthLow();

	/**
	 * Sets the value of the '{@link org.ferrule.model.AfterUseRule#getGrowthLow <em>Growth Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Growth Low</em>' attribute.
	 * @see #getGrowthLow()
	 * @generated
	 */
	void setGrowthLow(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Growth Centre</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The likely factor.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Growth Centre</em>' attribute.
	 * @see #setGrowthCentre(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getAfterUseRule_GrowthCentre()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 above='0'"
	 * @generated
	 */
	BigDecimal getGrowthCentre();

	/**
	 * Sets the value of the '{@link org.ferrule.model.AfterUseRule#getGrowthCentre <em>Growth Centre</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Growth Centre</em>' attribute.
	 * @see #getGrowthCentre()
	 * @generated
	 */
	void setGrowthCentre(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Growth High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The largest factor.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Growth High</em>' attribute.
	 * @see #setGrowthHigh(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getAfterUseRule_GrowthHigh()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 above='0'"
	 * @generated
	 */
	BigDecimal getGrowthHigh();

	/**
	 * Sets the value of the '{@link org.ferrule.model.AfterUseRule#getGrowthHigh <em>Growth High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Growth High</em>' attribute.
	 * @see #getGrowthHigh()
	 * @generated
	 */
	void setGrowthHigh(BigDecimal value);

} // AfterUseRule
