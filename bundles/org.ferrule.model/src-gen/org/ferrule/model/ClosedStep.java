/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Closed Step</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A step of the plan of a closed case.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.ClosedStep#getMove <em>Move</em>}</li>
 *   <li>{@link org.ferrule.model.ClosedStep#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.ClosedStep#getDevices <em>Devices</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getClosedStep()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Step'"
 * @generated
 */
public interface ClosedStep extends Element
{
	/**
	 * Returns the value of the '<em><b>Move</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the technique or the set-up.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Move</em>' attribute.
	 * @see #setMove(String)
	 * @see org.ferrule.model.ModelPackage#getClosedStep_Move()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Technique or set-up'"
	 * @generated
	 */
	String getMove();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ClosedStep#getMove <em>Move</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Move</em>' attribute.
	 * @see #getMove()
	 * @generated
	 */
	void setMove(String value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its name then.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.ferrule.model.ModelPackage#getClosedStep_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ClosedStep#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Devices</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The devices that it was planned with.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Devices</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getClosedStep_Devices()
	 * @model unique="false"
	 * @generated
	 */
	EList<String> getDevices();

} // ClosedStep
