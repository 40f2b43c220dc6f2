/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Advised</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What must be known of a technique or a set-up beside its figures.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Advised#getChanges <em>Changes</em>}</li>
 *   <li>{@link org.ferrule.model.Advised#getCautions <em>Cautions</em>}</li>
 *   <li>{@link org.ferrule.model.Advised#getOffLabel <em>Off Label</em>}</li>
 *   <li>{@link org.ferrule.model.Advised#getStop <em>Stop</em>}</li>
 *   <li>{@link org.ferrule.model.Advised#getPublished <em>Published</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getAdvised()
 * @model abstract="true"
 * @generated
 */
public interface Advised extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Changes</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it changes, one statement a line.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Changes</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getAdvised_Changes()
	 * @model unique="false"
	 * @generated
	 */
	EList<String> getChanges();

	/**
	 * Returns the value of the '<em><b>Cautions</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What can go wrong and what is never done, one statement a line.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cautions</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getAdvised_Cautions()
	 * @model unique="false"
	 * @generated
	 */
	EList<String> getCautions();

	/**
	 * Returns the value of the '<em><b>Off Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Why it lies outside the instructions for use; not given when it does not.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Off Label</em>' attribute.
	 * @see #setOffLabel(String)
	 * @see org.ferrule.model.ModelPackage#getAdvised_OffLabel()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Off label because'"
	 * @generated
	 */
	String getOffLabel();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Advised#getOffLabel <em>Off Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Off Label</em>' attribute.
	 * @see #getOffLabel()
	 * @generated
	 */
	void setOffLabel(String value);

	/**
	 * Returns the value of the '<em><b>Stop</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When to give it up.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stop</em>' attribute.
	 * @see #setStop(String)
	 * @see org.ferrule.model.ModelPackage#getAdvised_Stop()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Give up when'"
	 * @generated
	 */
	String getStop();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Advised#getStop <em>Stop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stop</em>' attribute.
	 * @see #getStop()
	 * @generated
	 */
	void setStop(String value);

	/**
	 * Returns the value of the '<em><b>Published</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Published}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was published about it, in words: never the chance of a try.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Published</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getAdvised_Published()
	 * @model containment="true"
	 * @generated
	 */
	EList<Published> getPublished();

} // Advised
