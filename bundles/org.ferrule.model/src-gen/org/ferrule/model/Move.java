/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Move</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What a technique and a set-up have in common.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Move#getId <em>Id</em>}</li>
 *   <li>{@link org.ferrule.model.Move#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.Move#getHazard <em>Hazard</em>}</li>
 *   <li>{@link org.ferrule.model.Move#getRoles <em>Roles</em>}</li>
 *   <li>{@link org.ferrule.model.Move#getNeeds <em>Needs</em>}</li>
 *   <li>{@link org.ferrule.model.Move#getSetups <em>Setups</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getMove()
 * @model abstract="true"
 * @generated
 */
public interface Move extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name by which other elements refer to it; unique among the techniques and set-ups of its document.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.ferrule.model.ModelPackage#getMove_Id()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Move#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name that people read.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.ferrule.model.ModelPackage#getMove_Name()
	 * @model required="true"
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Move#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Hazard</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.Hazard}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much harm it can do.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Hazard</em>' attribute.
	 * @see org.ferrule.model.Hazard
	 * @see #isSetHazard()
	 * @see #unsetHazard()
	 * @see #setHazard(Hazard)
	 * @see org.ferrule.model.ModelPackage#getMove_Hazard()
	 * @model unsettable="true" required="true"
	 * @generated
	 */
	Hazard getHazard();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Move#getHazard <em>Hazard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hazard</em>' attribute.
	 * @see org.ferrule.model.Hazard
	 * @see #isSetHazard()
	 * @see #unsetHazard()
	 * @see #getHazard()
	 * @generated
	 */
	void setHazard(Hazard value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Move#getHazard <em>Hazard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetHazard()
	 * @see #getHazard()
	 * @see #setHazard(Hazard)
	 * @generated
	 */
	void unsetHazard();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Move#getHazard <em>Hazard</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Hazard</em>' attribute is set.
	 * @see #unsetHazard()
	 * @see #getHazard()
	 * @see #setHazard(Hazard)
	 * @generated
	 */
	boolean isSetHazard();

	/**
	 * Returns the value of the '<em><b>Roles</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Role}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it needs devices and equipment for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Roles</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getMove_Roles()
	 * @model containment="true"
	 * @generated
	 */
	EList<Role> getRoles();

	/**
	 * Returns the value of the '<em><b>Needs</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Need}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What must hold before it may be begun.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Needs</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getMove_Needs()
	 * @model containment="true"
	 * @generated
	 */
	EList<Need> getNeeds();

	/**
	 * Returns the value of the '<em><b>Setups</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The ids of the set-ups that must be in place.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Setups</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getMove_Setups()
	 * @model unique="false"
	 *        annotation="https://ferrule.invalid/annotation/1 refers='Setup' label='Set-ups in place'"
	 * @generated
	 */
	EList<String> getSetups();

} // Move
