/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Source</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Where figures come from.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Source#getId <em>Id</em>}</li>
 *   <li>{@link org.ferrule.model.Source#getTitle <em>Title</em>}</li>
 *   <li>{@link org.ferrule.model.Source#getKind <em>Kind</em>}</li>
 *   <li>{@link org.ferrule.model.Source#getRevision <em>Revision</em>}</li>
 *   <li>{@link org.ferrule.model.Source#getDate <em>Date</em>}</li>
 *   <li>{@link org.ferrule.model.Source#getReviewer <em>Reviewer</em>}</li>
 *   <li>{@link org.ferrule.model.Source#getReviewed <em>Reviewed</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getSource()
 * @model
 * @generated
 */
public interface Source extends Element
{
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name by which elements cite this source; unique in its document.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.ferrule.model.ModelPackage#getSource_Id()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Source#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The title of the source.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see org.ferrule.model.ModelPackage#getSource_Title()
	 * @model
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Source#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The default value is <code>"fromMemory"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.SourceKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What sort of source it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.ferrule.model.SourceKind
	 * @see #isSetKind()
	 * @see #unsetKind()
	 * @see #setKind(SourceKind)
	 * @see org.ferrule.model.ModelPackage#getSource_Kind()
	 * @model default="fromMemory" unsettable="true"
	 * @generated
	 */
	SourceKind getKind();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Source#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.ferrule.model.SourceKind
	 * @see #isSetKind()
	 * @see #unsetKind()
	 * @see #getKind()
	 * @generated
	 */
	void setKind(SourceKind value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Source#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetKind()
	 * @see #getKind()
	 * @see #setKind(SourceKind)
	 * @generated
	 */
	void unsetKind();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Source#getKind <em>Kind</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Kind</em>' attribute is set.
	 * @see #unsetKind()
	 * @see #getKind()
	 * @see #setKind(SourceKind)
	 * @generated
	 */
	boolean isSetKind();

	/**
	 * Returns the value of the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The edition or revision of the source.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Revision</em>' attribute.
	 * @see #setRevision(String)
	 * @see org.ferrule.model.ModelPackage#getSource_Revision()
	 * @model
	 * @generated
	 */
	String getRevision();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Source#getRevision <em>Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Revision</em>' attribute.
	 * @see #getRevision()
	 * @generated
	 */
	void setRevision(String value);

	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The date of the source, ISO 8601: year, year-month or year-month-day.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(String)
	 * @see org.ferrule.model.ModelPackage#getSource_Date()
	 * @model annotation="https://ferrule.invalid/annotation/1 text='partial date'"
	 * @generated
	 */
	String getDate();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Source#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(String value);

	/**
	 * Returns the value of the '<em><b>Reviewer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who compared the figures with the source: a role or initials.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reviewer</em>' attribute.
	 * @see #setReviewer(String)
	 * @see org.ferrule.model.ModelPackage#getSource_Reviewer()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Reviewed by'"
	 * @generated
	 */
	String getReviewer();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Source#getReviewer <em>Reviewer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reviewer</em>' attribute.
	 * @see #getReviewer()
	 * @generated
	 */
	void setReviewer(String value);

	/**
	 * Returns the value of the '<em><b>Reviewed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When they were compared, ISO 8601: year-month-day.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reviewed</em>' attribute.
	 * @see #setReviewed(String)
	 * @see org.ferrule.model.ModelPackage#getSource_Reviewed()
	 * @model annotation="https://ferrule.invalid/annotation/1 text='date' label='Reviewed on'"
	 * @generated
	 */
	String getReviewed();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Source#getReviewed <em>Reviewed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reviewed</em>' attribute.
	 * @see #getReviewed()
	 * @generated
	 */
	void setReviewed(String value);

} // Source
