/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Setup</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Something brought into the system that stays, so that techniques become possible or better. It never gets a device across by itself.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Setup#getLeaves <em>Leaves</em>}</li>
 *   <li>{@link org.ferrule.model.Setup#isExchangesWire <em>Exchanges Wire</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getSetup()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Set-up'"
 * @generated
 */
public interface Setup extends Move, Costed, Advised
{
	/**
	 * Returns the value of the '<em><b>Leaves</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Placement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it leaves in the system.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Leaves</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getSetup_Leaves()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 position='after setups' label='Leaves in place'"
	 * @generated
	 */
	EList<Placement> getLeaves();

	/**
	 * Returns the value of the '<em><b>Exchanges Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the main wire is exchanged, so that its length must allow it or something must hold it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Exchanges Wire</em>' attribute.
	 * @see #setExchangesWire(boolean)
	 * @see org.ferrule.model.ModelPackage#getSetup_ExchangesWire()
	 * @model annotation="https://ferrule.invalid/annotation/1 position='after money' label='Exchanges the main wire'"
	 * @generated
	 */
	boolean isExchangesWire();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Setup#isExchangesWire <em>Exchanges Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Exchanges Wire</em>' attribute.
	 * @see #isExchangesWire()
	 * @generated
	 */
	void setExchangesWire(boolean value);

} // Setup
